import { inside, sides, touch, type Outline } from '../../../entry/geometry/outline.js';
import { distanceToLine, type Point } from '../../../entry/geometry/point.js';
import type { KeepOut, SitePlan, Surface } from '../../../entry/geometry/site-plan.js';
import type { LayoutCable } from '../cable.js';
import { fieldsOf } from '../fields-of.js';
import { openSurface } from '../open-surface.js';

/** Numbers from 0 to 1, the same for the same seed (a 32-bit mixing generator; any would do). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let t = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    t = Math.imul(t ^ (t >>> 15), 0x735a2d97);
    return ((t ^ (t >>> 15)) >>> 0) / 2 ** 32;
  };
}

/** An invented entry, drawn by chance. */
export interface RandomSite {
  readonly plan: SitePlan;
  readonly areas: readonly string[];
  /** A set of whole feet for a mean spacing drawn by chance, whether it can be laid or not. */
  readonly cable: LayoutCable;
}

type Whole = (low: number, high: number) => number;

/** Kept free around posts and drains, in. */
const CLEARANCE = 2;
const SPACING = 3;
/** Mean spacings are drawn between these, in: from what hardly any surface takes to what melts little. */
const TIGHT = 3.4;
const LOOSE = 5.5;

/**
 * The random entry of a seed: a landing of a rectangle, an L, a T or a staircase, often with a movement joint, posts or a
 * drain, mostly with steps, and often with a walk that bends, flares and has joints and a post.
 *
 * Left out is what no cable hand could lay: a keep-out so near to an edge, a joint or another one that a run could go in beside
 * it but not back, and one in front of the sleeve, where the heated length has to begin.
 */
export function randomSite(seed: number): RandomSite {
  const draw = seeded(seed);
  const whole: Whole = (low, high) => low + Math.floor(draw() * (high - low + 1));
  const shape = landingShape(whole);
  const { outline, front } = shape;
  const [left, right] = [front[0].x, front[1].x];
  const sleeve = { x: whole(outline[0]!.x + 6, outline[1]!.x - 6), y: 0 };
  const setback = whole(3, 4);
  const joints = draw() < 0.35 ? [shape.joint] : [];
  const keepOuts: KeepOut[] = [];
  for (let wanted = whole(0, 2); wanted > 0; wanted--) {
    const out = draw() < 0.6 ? post(whole, outline) : drain(whole, outline);
    if (hasRoom(out, { outline, joints }, setback, keepOuts, sleeve)) keepOuts.push(out);
  }
  const surfaces: Surface[] = [
    {
      key: 'landing',
      kind: 'landing',
      name: 'Landing',
      outline,
      setback,
      sideSetbacks: {},
      keepOuts,
      joints,
    },
  ];
  if (draw() < 0.7) {
    const [riserCount, tread] = [whole(2, 4), whole(11, 14)];
    surfaces.push({
      key: 'steps',
      kind: 'flight',
      name: 'Steps',
      top: front,
      riserCount,
      riser: 7,
      tread,
      nosing: 1,
      setback: 3,
      frontSetback: 3,
      keepOuts: [],
    });
    const foot = { x: (left + right) / 2, y: front[0].y + (riserCount - 1) * tread };
    if (draw() < 0.7) surfaces.push(walk(foot, right - left, whole));
  }
  const plan: SitePlan = {
    wall: [
      { x: -30, y: 0 },
      { x: 400, y: 0 },
    ],
    penetration: sleeve,
    surfaces,
  };
  const areas = surfaces.map(({ key }) => key);
  const cable = {
    length: 0,
    watts: 3000,
    leastBend: [1, 1.25, 1.5][whole(0, 2)]!,
    leastSpacing: SPACING,
    greatestSpacing: 12,
    coldLead: 240,
  };
  const spacing = TIGHT + draw() * (LOOSE - TIGHT);
  const feet = Math.round(openSurface(fieldsOf(plan, areas, cable), cable) / spacing / 12);
  return { plan, areas, cable: { ...cable, length: feet * 12 } };
}

/** Corners from the wall around, the front side that steps go down from, and where a movement joint would be cut. */
interface LandingShape {
  readonly outline: Outline;
  readonly front: readonly [Point, Point];
  readonly joint: readonly [Point, Point];
}

function landingShape(whole: Whole): LandingShape {
  const [w, h] = [whole(60, 150), whole(48, 90)];
  const at = (x: number, y: number): Point => ({ x, y });
  switch (whole(0, 3)) {
    case 0: {
      const across = whole(24, w - 24);
      return {
        outline: [at(0, 0), at(w, 0), at(w, h), at(0, h)],
        // A landing that is cut lengthwise is left over its far part.
        front: [at(0, h), at(w, h)],
        joint: whole(0, 1) === 0 ? [at(0, h / 2), at(w, h / 2)] : [at(across, 0), at(across, h)],
      };
    }
    case 1: {
      const [x, y] = [whole(40, 60), whole(36, 60)];
      const far = y + whole(36, 70);
      return {
        outline: [at(0, 0), at(w + x, 0), at(w + x, y), at(x, y), at(x, far), at(0, far)],
        front: [at(0, far), at(x, far)],
        joint: [at(0, y), at(x, y)],
      };
    }
    case 2: {
      const [side, x, y] = [whole(30, 60), whole(40, 80), whole(36, 60)];
      const far = y + whole(36, 70);
      const [a, b, c] = [side, side + x, 2 * side + x];
      return {
        outline: [at(0, 0), at(c, 0), at(c, y), at(b, y), at(b, far), at(a, far), at(a, y), at(0, y)],
        front: [at(a, far), at(b, far)],
        joint: [at(a, y), at(b, y)],
      };
    }
    default: {
      const a = whole(44, 70);
      const b = a + whole(24, 40);
      const c = b + whole(24, 40);
      const p = whole(36, 50);
      const q = p + whole(24, 40);
      const r = q + whole(24, 40);
      return {
        outline: [at(0, 0), at(c, 0), at(c, p), at(b, p), at(b, q), at(a, q), at(a, r), at(0, r)],
        front: [at(0, r), at(a, r)],
        joint: [at(0, q), at(a, q)],
      };
    }
  }
}

function anywhere(whole: Whole, outline: Outline): Point {
  const [xs, ys] = [outline.map((p) => p.x), outline.map((p) => p.y)];
  return { x: whole(0, Math.max(...xs)), y: whole(0, Math.max(...ys)) };
}

const post = (whole: Whole, outline: Outline): KeepOut => ({
  kind: 'round',
  name: 'post',
  centre: anywhere(whole, outline),
  radius: whole(1, 3),
  clearance: CLEARANCE,
});

function drain(whole: Whole, outline: Outline): KeepOut {
  const { x, y } = anywhere(whole, outline);
  const [long, wide] = [whole(6, 30), whole(3, 8)];
  const [w, h] = whole(0, 1) === 0 ? [long, wide] : [wide, long];
  return {
    kind: 'outline',
    name: 'drain',
    outline: [
      { x, y },
      { x: x + w, y },
      { x: x + w, y: y + h },
      { x, y: y + h },
    ],
    clearance: CLEARANCE,
  };
}

/** Whether two runs can pass between a keep-out and every edge, joint and other keep-out, and the cable can begin. */
function hasRoom(
  out: KeepOut,
  { outline, joints }: { outline: Outline; joints: readonly (readonly [Point, Point])[] },
  setback: number,
  others: readonly KeepOut[],
  sleeve: Point,
): boolean {
  const corners = out.kind === 'round' ? [out.centre] : out.outline;
  const around = out.kind === 'round' ? out.radius : 0;
  const lines = [...sides(outline), ...joints];
  const twoRuns = 2 * SPACING;
  return (
    corners.every((p) => inside(outline, p)) &&
    lines.every(([a, b]) => gap(corners, [a, b]) - around >= setback + CLEARANCE + twoRuns) &&
    others.every((other) => {
      const [theirs, radius] = other.kind === 'round' ? [[other.centre], other.radius] : [other.outline, 0];
      return gap(corners, theirs) - around - radius >= 2 * CLEARANCE + twoRuns;
    }) &&
    gap(corners, [sleeve]) - around >= setback + CLEARANCE + 2 * twoRuns
  );
}

/** Between two outlines, lines or places that do not meet, in. */
function gap(one: readonly Point[], other: readonly Point[]): number {
  const away = (points: readonly Point[], outline: readonly Point[]) =>
    Math.min(...points.flatMap((p) => sides(outline).map(([a, b]) => distanceToLine(p, a, b))));
  const meet = sides(one).some(([a, b]) => sides(other).some(([c, d]) => touch(a, b, c, d)));
  return meet ? 0 : Math.min(away(one, other), away(other, one));
}

/** Bends are turned by one of these half of the time, in degrees. */
const TURNS = [-90, -45, 45, 90] as const;

/**
 * A walk from the foot of the steps with a bend or two, of 45° or 90° half of the time, and a flare at its end; sometimes with
 * joints, or a post in its first leg.
 */
function walk(start: Point, width: number, whole: Whole): Surface {
  const half = Math.min(width, 48) / 2;
  const line = [{ at: start, width: 2 * half }];
  let at = { x: start.x, y: start.y + whole(50, 110) };
  const first = at.y - start.y;
  let heading = 0;
  const legs = whole(0, 3) > 0 ? 1 : 2;
  for (let leg = 1; leg <= legs; leg++) {
    line.push({ at, width: 2 * half });
    const turn = whole(0, 1) === 0 ? whole(-60, 60) : TURNS[whole(0, 3)]!;
    // Nothing leads back towards the steps.
    heading += Math.abs(heading + turn) > 90 ? -turn : turn;
    const length = whole(60, 130);
    const along = (heading * Math.PI) / 180;
    at = { x: at.x + length * Math.sin(along), y: at.y + length * Math.cos(along) };
  }
  line.push({ at, width: whole(42, 66) });
  return {
    key: 'walk',
    kind: 'walk',
    name: 'Walk',
    line,
    setback: 3,
    keepOuts:
      whole(0, 3) > 0
        ? []
        : [
            {
              kind: 'round',
              name: 'post',
              centre: { x: start.x + whole(-6, 6), y: start.y + 14 },
              radius: 2,
              clearance: CLEARANCE,
            },
          ],
    joints: whole(0, 2) > 0 ? [] : [first + whole(30, 36)],
  };
}
