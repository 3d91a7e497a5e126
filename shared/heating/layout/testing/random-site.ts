import type { Outline } from '../../../entry/geometry/outline.js';
import type { Point } from '../../../entry/geometry/point.js';
import type { KeepOut, SitePlan, Surface } from '../../../entry/geometry/site-plan.js';
import type { LayoutCable } from '../cable.js';

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

/** An invented entry: a landing of an L, a T, a staircase or a rectangle, sometimes with post, drain, steps and a bent walk. */
export interface RandomSite {
  readonly plan: SitePlan;
  readonly areas: readonly string[];
  /** A set without a length: tests choose one that the surfaces can take. */
  readonly cable: Omit<LayoutCable, 'length'>;
}

const SHAPES = ['rectangle', 'L', 'T', 'staircase'] as const;

/** The random entry of a seed. */
export function randomSite(seed: number): RandomSite {
  const draw = seeded(seed);
  const whole = (low: number, high: number) => low + Math.floor(draw() * (high - low + 1));
  const shape = SHAPES[whole(0, 3)]!;
  const { outline, front } = landingOutline(shape, whole);
  const [left, right] = [front[0].x, front[1].x];
  const y = front[0].y;
  const keepOuts: KeepOut[] = [];
  if (draw() < 0.5)
    keepOuts.push(post({ x: whole(left + 14, right - 14), y: whole(16, y - 16) }, whole(1, 3)));
  const withSteps = draw() < 0.6;
  const surfaces: Surface[] = [
    {
      key: 'landing',
      kind: 'landing',
      name: 'Landing',
      outline,
      setback: whole(3, 4),
      sideSetbacks: {},
      keepOuts,
      joints: [],
    },
  ];
  if (withSteps) {
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
    if (draw() < 0.7)
      surfaces.push(walk({ x: (left + right) / 2, y: y + (riserCount - 1) * tread }, right - left, whole));
  }
  const penetration = { x: whole(outline[0]!.x + 6, outline[1]!.x - 6), y: 0 };
  return {
    plan: {
      wall: [
        { x: -30, y: 0 },
        { x: 400, y: 0 },
      ],
      penetration,
      surfaces,
    },
    areas: surfaces.map(({ key }) => key),
    cable: {
      watts: 3000,
      leastBend: [1, 1.25, 1.5][whole(0, 2)]!,
      leastSpacing: 3,
      greatestSpacing: 12,
      coldLead: 240,
    },
  };
}

type Whole = (low: number, high: number) => number;

/** Corners from the wall around, and the front side, which steps go down from. */
function landingOutline(
  shape: (typeof SHAPES)[number],
  whole: Whole,
): { outline: Outline; front: readonly [Point, Point] } {
  const [w, h] = [whole(60, 150), whole(48, 90)];
  const at = (x: number, y: number): Point => ({ x, y });
  switch (shape) {
    case 'rectangle':
      return { outline: [at(0, 0), at(w, 0), at(w, h), at(0, h)], front: [at(0, h), at(w, h)] };
    case 'L': {
      const [x, y] = [whole(40, 60), whole(36, 60)];
      const far = y + whole(36, 70);
      return {
        outline: [at(0, 0), at(w + x, 0), at(w + x, y), at(x, y), at(x, far), at(0, far)],
        front: [at(0, far), at(x, far)],
      };
    }
    case 'T': {
      const [side, x, y] = [whole(30, 60), whole(40, 80), whole(36, 60)];
      const far = y + whole(36, 70);
      return {
        outline: [
          at(0, 0),
          at(2 * side + x, 0),
          at(2 * side + x, y),
          at(side + x, y),
          at(side + x, far),
          at(side, far),
          at(side, y),
          at(0, y),
        ],
        front: [at(side, far), at(side + x, far)],
      };
    }
    case 'staircase': {
      const [a, b, c] = [whole(44, 70), whole(24, 40), whole(24, 40)];
      const [p, q, r] = [whole(36, 50), whole(24, 40), whole(24, 40)];
      return {
        outline: [
          at(0, 0),
          at(a + b + c, 0),
          at(a + b + c, p),
          at(a + b, p),
          at(a + b, p + q),
          at(a, p + q),
          at(a, p + q + r),
          at(0, p + q + r),
        ],
        front: [at(0, p + q + r), at(a, p + q + r)],
      };
    }
  }
}

const post = (centre: Point, radius: number): KeepOut => ({
  kind: 'round',
  name: 'post',
  centre,
  radius,
  clearance: 2,
});

/** A walk with a bend and a flare, from the foot of the steps. */
function walk(start: Point, width: number, whole: Whole): Surface {
  const bend = { x: start.x, y: start.y + whole(50, 110) };
  const angle = (whole(-60, 60) * Math.PI) / 180;
  const length = whole(60, 130);
  return {
    key: 'walk',
    kind: 'walk',
    name: 'Walk',
    line: [
      { at: start, width: Math.min(width, 48) },
      { at: bend, width: Math.min(width, 48) },
      {
        at: { x: bend.x + length * Math.sin(angle), y: bend.y + length * Math.cos(angle) },
        width: whole(42, 66),
      },
    ],
    setback: 3,
    keepOuts: [],
    joints: [],
  };
}
