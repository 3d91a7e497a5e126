import { inside, sides as sidesOf, signedArea, touch, type Outline } from '../../entry/geometry/outline.js';
import { distanceToLine, type Point } from '../../entry/geometry/point.js';
import type { KeepOut, SitePlan, Surface } from '../../entry/geometry/site-plan.js';
import { sharedStretch, splitAtJoint, type KeptSide } from '../../entry/geometry/split-at-joint.js';
import { treads } from '../../entry/geometry/treads.js';
import { walkLegs } from '../../entry/geometry/walk-legs.js';
import { closestSpacing, type LayoutCable } from './cable.js';
import { chamferFor, roomAtNosing } from './chamfer.js';
import type { Field, FieldChain, Passage } from './field.js';

/** Kept free on both hands of a movement joint, in. Common practice, no source. */
const JOINT_SETBACK = 2;

/** Why surfaces cannot be heated one after the other. */
export class NoWayThrough extends Error {}

/** The surfaces that a set runs through, as fields in turn with a passage between each and the next. */
export function fieldsOf(plan: SitePlan, areaKeys: readonly string[], cable: LayoutCable): FieldChain {
  const fields: Field[] = [];
  let level = 0;
  let source = plan.penetration;
  for (const surface of plan.surfaces) {
    const parts = partsOf(surface, source, cable).map((sides, i, all): Field => ({
      key: all.length === 1 ? surface.key : `${surface.key}/${i + 1}`,
      areaKey: surface.key,
      kind: surface.kind === 'flight' ? 'tread' : surface.kind,
      sides,
      keepOuts: surface.keepOuts.filter((out) => reachesInto(sides, out)),
      level: surface.kind === 'flight' ? level - (i + 1) * surface.riser : level,
    }));
    if (areaKeys.includes(surface.key)) fields.push(...parts);
    if (surface.kind === 'flight') level -= surface.riserCount * surface.riser;
    source = middle(parts[parts.length - 1]?.sides ?? []) ?? source;
  }
  if (fields.length === 0) throw new NoWayThrough('the set heats none of the surfaces; name its areas');
  return join(fields, cable);
}

function partsOf(surface: Surface, source: Point, cable: LayoutCable): KeptSide[][] {
  // A turn must fit into the setback, and runs on both hands of a line must keep their spacing.
  const least = Math.max(cable.leastBend, closestSpacing(cable) / 2);
  const kept = (outline: Outline, setback: (side: number) => number): KeptSide[] =>
    oriented(sidesOf(outline).map(([a, b], i) => ({ a, b, setback: Math.max(least, setback(i)) })));
  switch (surface.kind) {
    case 'landing':
      return surface.joints.reduce<KeptSide[][]>(
        (parts, joint) =>
          parts.flatMap((part) => inTurn(part, joint, Math.max(least, JOINT_SETBACK), source)),
        [kept(surface.outline, (i) => surface.sideSetbacks[i] ?? surface.setback)],
      );
    case 'flight': {
      const front = Math.max(surface.frontSetback, roomAtNosing(cable.leastBend));
      const back = 2 * cable.leastBend;
      return treads(surface, source).map((tread) =>
        kept(tread, (i) => (i === 0 ? back : i === 2 ? front : surface.setback)),
      );
    }
    case 'walk':
      return walkLegs(surface).map((leg, i, all) =>
        kept(leg, (side) =>
          (side === 0 && i > 0) || (side === 2 && i < all.length - 1) ? least : surface.setback,
        ),
      );
  }
}

/** Both hands of a joint, the one nearer to where the cable comes from first. */
function inTurn(
  part: KeptSide[],
  joint: readonly [Point, Point],
  setback: number,
  source: Point,
): KeptSide[][] {
  const split = splitAtJoint(part, joint, setback);
  if (!split) return [part];
  const far = (sides: readonly KeptSide[]) =>
    isOn(sides, source) ? 0 : Math.min(...sides.map(({ a, b }) => distanceToLine(source, a, b)));
  return far(split[0]) <= far(split[1]) ? [...split] : [split[1], split[0]];
}

function oriented(sides: KeptSide[]): KeptSide[] {
  if (signedArea(sides.map(({ a }) => a)) > 0) return sides;
  return sides.map(({ a, b, setback }) => ({ a: b, b: a, setback })).reverse();
}

const isOn = (sides: readonly KeptSide[], p: Point): boolean =>
  inside(
    sides.map(({ a }) => a),
    p,
  );

/** Whether a keep-out, with what it holds free, lies on a part of a surface: one near a joint may lie on both. */
function reachesInto(sides: readonly KeptSide[], out: KeepOut): boolean {
  const corners = sides.map(({ a }) => a);
  const near = ({ a, b }: KeptSide): number =>
    out.kind === 'round'
      ? distanceToLine(out.centre, a, b) - out.radius
      : Math.min(
          ...sidesOf(out.outline).map(([p, q]) => (touch(a, b, p, q) ? 0 : Infinity)),
          ...out.outline.map((p) => distanceToLine(p, a, b)),
          ...sidesOf(out.outline).map(([p, q]) => distanceToLine(a, p, q)),
        );
  return (
    inside(corners, out.kind === 'round' ? out.centre : out.outline[0]!) ||
    sides.some((side) => near(side) < out.clearance)
  );
}

function middle(sides: readonly KeptSide[]): Point | null {
  if (sides.length === 0) return null;
  const sum = sides.reduce((s, { a }) => ({ x: s.x + a.x, y: s.y + a.y }), { x: 0, y: 0 });
  return { x: sum.x / sides.length, y: sum.y / sides.length };
}

/** Finds the shared line between each field and the next, and keeps there what a step down needs. */
function join(fields: readonly Field[], cable: LayoutCable): FieldChain {
  const out = [...fields];
  const passages: Passage[] = [];
  for (let i = 0; i + 1 < out.length; i++) {
    const [from, to] = [out[i]!, out[i + 1]!];
    const pair = sharedSides(from, to, 6);
    if (!pair) {
      throw new NoWayThrough(
        `"${from.areaKey}" and "${to.areaKey}" do not share a side of 6 in or more; measure where they meet, or give each a set of its own`,
      );
    }
    const down = from.level - to.level > 1e-6;
    passages.push({ ...pair, chamfer: down ? chamferFor(cable.leastBend) : 0 });
    if (!down) continue;
    out[i] = withSetback(from, pair.fromSide, roomAtNosing(cable.leastBend));
    out[i + 1] = withSetback(to, pair.toSide, 2 * cable.leastBend);
  }
  return { fields: out, passages };
}

function sharedSides(from: Field, to: Field, least: number): Pick<Passage, 'fromSide' | 'toSide'> | null {
  for (const [fromSide, one] of from.sides.entries()) {
    const toSide = to.sides.findIndex((other) => sharedStretch(one, other, least) !== null);
    if (toSide >= 0) return { fromSide, toSide };
  }
  return null;
}

const withSetback = (field: Field, side: number, setback: number): Field => ({
  ...field,
  sides: field.sides.map((s, i) => (i === side ? { ...s, setback: Math.max(s.setback, setback) } : s)),
});
