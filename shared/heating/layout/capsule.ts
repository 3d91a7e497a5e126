import { distanceToLine, subtract, type Point } from '../../entry/geometry/point.js';

/** All places within `radius` of the line from `a` to `b`, in: what a side, a post or a laid run keeps other runs out of. */
export interface Capsule {
  readonly a: Point;
  readonly b: Point;
  readonly radius: number;
}

/** From where to where something reaches along x; null when nowhere. */
export type Span = readonly [number, number];

/** Where a capsule lies on the line at height y. */
function spanAt({ a, b, radius }: Capsule, y: number): Span | null {
  const xs: number[] = [];
  for (const p of [a, b]) {
    const h = radius * radius - (y - p.y) ** 2;
    if (h >= 0) xs.push(p.x - Math.sqrt(h), p.x + Math.sqrt(h));
  }
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length > 0) {
    const [nx, ny] = [(-(b.y - a.y) / length) * radius, ((b.x - a.x) / length) * radius];
    for (const sign of [1, -1]) {
      const [from, to] = [a.y + sign * ny, b.y + sign * ny];
      if (from === to || y < Math.min(from, to) || y > Math.max(from, to)) continue;
      xs.push(a.x + sign * nx + ((y - from) / (to - from)) * (b.x - a.x));
    }
  }
  return xs.length === 0 ? null : [Math.min(...xs), Math.max(...xs)];
}

/**
 * What a capsule takes of the band of height from `y1` to `y2`, seen from above. The capsule is convex, so its edge
 * on either hand is farthest out at an end of its line, or where the band comes nearest to that end.
 */
export function bandSpan(capsule: Capsule, y1: number, y2: number): Span | null {
  const { a, b, radius } = capsule;
  if (Math.max(a.y, b.y) + radius < y1 || Math.min(a.y, b.y) - radius > y2) return null;
  const far = (sign: 1 | -1): number => {
    const reach = Math.max(sign * a.x, sign * b.x);
    const ends = [a, b].filter((p) => Math.abs(sign * p.x - reach) < 1e-9).map((p) => p.y);
    const [low, high] = [Math.min(...ends), Math.max(...ends)];
    if (low <= y2 && high >= y1) return sign * (reach + radius);
    const span = spanAt(capsule, low > y2 ? y2 : y1);
    return span === null ? NaN : span[sign > 0 ? 1 : 0];
  };
  const span: Span = [far(-1), far(1)];
  return Number.isNaN(span[0]) || Number.isNaN(span[1]) ? null : span;
}

/** How near the straight line from `p` to `q` comes to the line within a capsule, in. */
export function gapBetween(p: Point, q: Point, { a, b }: Capsule): number {
  const [u, v, w] = [subtract(q, p), subtract(b, a), subtract(a, p)];
  const turn = u.x * v.y - u.y * v.x;
  if (Math.abs(turn) > 1e-12) {
    const t = (w.x * v.y - w.y * v.x) / turn;
    const s = (w.x * u.y - w.y * u.x) / turn;
    if (t >= 0 && t <= 1 && s >= 0 && s <= 1) return 0;
  }
  return Math.min(
    distanceToLine(p, a, b),
    distanceToLine(q, a, b),
    distanceToLine(a, p, q),
    distanceToLine(b, p, q),
  );
}
