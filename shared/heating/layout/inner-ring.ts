import {
  add,
  cross,
  direction,
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
      const s = sides[side]!;
      return dot(subtract(b, a), direction(s.a, s.b)) <= 1e-6;
    });
    if (!turned) return ring;
    kept = kept.filter((i) => i !== turned.side);
  }
  return null;
}

function corners(sides: readonly KeptSide[], kept: readonly number[]): RingSide[] {
  const at = kept.map((i, k) => meet(sides[kept[(k - 1 + kept.length) % kept.length]!]!, sides[i]!));
  return kept.map((side, k) => ({ a: at[k]!, b: at[(k + 1) % at.length]!, side }));
}

/** Where the lines along two sides meet, each moved inwards by its setback; sides in one line meet at the wider one. */
function meet(before: KeptSide, after: KeptSide): Point {
  const [u, v] = [direction(before.a, before.b), direction(after.a, after.b)];
  const turn = cross(u, v);
  if (Math.abs(turn) < 1e-6) {
    return add(after.a, scale(quarterTurn(v), Math.max(before.setback, after.setback)));
  }
  const p = add(before.a, scale(quarterTurn(u), before.setback));
  const q = add(after.a, scale(quarterTurn(v), after.setback));
  return add(p, scale(u, cross(subtract(q, p), v) / turn));
}
