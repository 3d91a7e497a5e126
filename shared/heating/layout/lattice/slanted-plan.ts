import { inside } from '../../../entry/geometry/outline.js';
import {
  between,
  cross,
  distance,
  distanceToLine,
  subtract,
  type Point,
} from '../../../entry/geometry/point.js';
import { gapBetween, type Capsule } from '../capsule.js';
import type { Field } from '../field.js';
import type { RingSide } from '../inner-ring.js';
import { keepOutCapsules } from '../zone.js';
import type { LatticePlan } from './lattice-plan.js';
import { cutsOf, type LineFamily } from './lines.js';

/** Where the cable comes in or leaves: a place on a side of the ring, by the side's number in it. */
export interface Gate {
  readonly at: Point;
  readonly on: number;
}

/**
 * Lines of a field with four sides that do not meet squarely, such as a leg of a walk between two bends: from side to side
 * they fan out evenly, so that the outermost lie along the setbacks. Null when it has not four sides or is hollow.
 */
export function slantedPlan(
  field: Field,
  ring: readonly RingSide[],
  gates: readonly Gate[],
  closest: number,
  bend: number,
): LatticePlan | null {
  if (ring.length !== 4 || !isConvex(ring)) return null;
  const corners = ring.map(({ a }) => a);
  const forced: [number[], number[]] = [[], []];
  const cornerAt = ({ at, on }: Gate) => [on, (on + 1) % 4].find((i) => distance(ring[i]!.a, at) < closest);
  for (const gate of gates) {
    const corner = cornerAt(gate);
    if (corner === undefined || distance(ring[corner]!.a, gate.at) < 1e-6) continue;
    // The outermost line begins where the cable comes in; two ways in cannot both have the same corner.
    if (gates.some((other) => other !== gate && cornerAt(other) === corner)) return null;
    corners[corner] = gate.at;
  }
  for (const gate of gates) {
    if (cornerAt(gate) !== undefined) continue;
    const [from, to] = [corners[gate.on]!, corners[(gate.on + 1) % 4]!];
    const part = distance(from, gate.at) / distance(from, to);
    forced[gate.on % 2]!.push(gate.on < 2 ? part : 1 - part);
  }
  const [a, b, c, d] = corners as [Point, Point, Point, Point];
  const place = (u: number, v: number): Point => between(between(a, b, u), between(d, c, u), v);
  const rowEnds = (v: number) => [place(0, v), place(1, v)] as const;
  const columnEnds = (u: number) => [place(u, 0), place(u, 1)] as const;
  const family = (ends: typeof rowEnds, own: readonly number[]): LineFamily => {
    const apart = (one: number, other: number) => leastBetween(ends(one), ends(other));
    return { cuts: cutsOf([...own, 0, 1], apart, closest), apart };
  };
  const keepOuts = field.keepOuts.flatMap((out) => keepOutCapsules(out, 0, closest));
  const holes = field.keepOuts.flatMap((out) => (out.kind === 'outline' ? [out.outline] : []));
  const build: LatticePlan['build'] = (vs, us) => {
    const [rows, columns] = [vs.length, us.length];
    const places = vs.flatMap((v) => us.map((u) => place(u, v)));
    const clear = (p: Point | undefined, q: Point | undefined): 0 | 1 =>
      p && q && isClear(p, q, keepOuts) && !holes.some((hole) => inside(hole, p)) ? 1 : 0;
    return {
      rows,
      columns,
      x: Float64Array.from(places, (p) => p.x),
      y: Float64Array.from(places, (p) => p.y),
      free: Uint8Array.from(places, (p) => clear(p, p)),
      alongRow: Uint8Array.from(places, (p, node) =>
        node % columns === columns - 1 ? 0 : clear(p, places[node + 1]),
      ),
      alongColumn: Uint8Array.from(places, (p, node) => clear(p, places[node + columns])),
      rowGap: widest(vs.map(rowEnds)),
      columnGap: widest(us.map(columnEnds)),
      bend,
    };
  };
  return { rows: family(rowEnds, forced[1]), columns: family(columnEnds, forced[0]), build };
}

const isClear = (p: Point, q: Point, capsules: readonly Capsule[]): boolean =>
  capsules.every((capsule) => gapBetween(p, q, capsule) >= capsule.radius - 1e-6);

const isConvex = (ring: readonly RingSide[]): boolean =>
  ring.every(({ a, b }, i) => cross(subtract(b, a), subtract(ring[(i + 1) % ring.length]!.b, b)) > 1e-6);

type Ends = readonly [Point, Point];

const leastBetween = (one: Ends, other: Ends): number =>
  Math.min(...one.map((p) => distanceToLine(p, ...other)), ...other.map((p) => distanceToLine(p, ...one)));

/** The widest that neighbouring lines come to lie, square to one of them. */
function widest(lines: readonly Ends[]): number {
  let most = 0;
  lines.slice(1).forEach(([a, b], i) => {
    const [c, d] = lines[i]!;
    const length = distance(a, b);
    for (const p of [c, d]) most = Math.max(most, Math.abs(cross(subtract(b, a), subtract(p, a))) / length);
  });
  return most;
}
