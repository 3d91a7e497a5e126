import {
  add,
  cross,
  direction,
  distance,
  dot,
  quarterTurn,
  scale,
  subtract,
  type Point,
} from '../../entry/geometry/point.js';
import type { KeptSide } from '../../entry/geometry/split-at-joint.js';

/** A side of the line along the setbacks, and the side of the field that it follows. */
export interface RingSide {
  readonly a: Point;
  readonly b: Point;
  /** -1 where it steps over from one setback to another between two sides in one line. */
  readonly side: number;
}

/**
 * The closed line along the setbacks, on which the outermost runs lie. Sides that the setbacks of their neighbours
 * leave nothing of are left out; null when nothing is left of the whole.
 */
export function innerRing(sides: readonly KeptSide[]): RingSide[] | null {
  let kept = sides.map((_, i) => i);
  while (kept.length >= 3) {
    const ring = corners(sides, kept);
    const turned = ring.find(({ a, b, side }) => {
      const s = sides[side];
      if (!s) return false;
      return dot(subtract(b, a), direction(s.a, s.b)) <= 1e-6;
    });
    if (!turned) return ring;
    kept = kept.filter((i) => i !== turned.side);
  }
  return null;
}

function corners(sides: readonly KeptSide[], kept: readonly number[]): RingSide[] {
  const at = kept.map((i, k) => meet(sides[kept[(k - 1 + kept.length) % kept.length]!]!, sides[i]!));
  return kept.flatMap((side, k): RingSide[] => {
    const own = { a: at[k]![1], b: at[(k + 1) % at.length]![0], side };
    const [from, to] = at[k]!;
    return distance(from, to) < 1e-6 ? [own] : [{ a: from, b: to, side: -1 }, own];
  });
}

/** Where the line along one side ends and that along the next begins: one place, but for sides in one line. */
function meet(before: KeptSide, after: KeptSide): readonly [Point, Point] {
  const [u, v] = [direction(before.a, before.b), direction(after.a, after.b)];
  const turn = cross(u, v);
  if (Math.abs(turn) < 1e-6) {
    const inwards = quarterTurn(v);
    // The wider setback is kept past its end, so that the step between both is clear of it.
    const by = scale(v, Math.sign(before.setback - after.setback) * Math.max(before.setback, after.setback));
    const step = add(after.a, before.setback === after.setback ? { x: 0, y: 0 } : by);
    return [add(step, scale(inwards, before.setback)), add(step, scale(inwards, after.setback))];
  }
  const p = add(before.a, scale(quarterTurn(u), before.setback));
  const q = add(after.a, scale(quarterTurn(v), after.setback));
  const at = add(p, scale(u, cross(subtract(q, p), v) / turn));
  return [at, at];
}
