import {
  add,
  direction,
  distance,
  dot,
  quarterTurn,
  scale,
  subtract,
  type Point,
} from '../../entry/geometry/point.js';
import type { Capsule } from './capsule.js';

/**
 * The line from `a` to `b`, led around what stands on it (posts, drains), on the hand where the field is. A step
 * aside is no shorter than two bends.
 */
export function detour(a: Point, b: Point, obstacles: readonly Capsule[], leastBend: number): Point[] {
  const along = direction(a, b);
  const inwards = quarterTurn(along);
  const length = distance(a, b);
  const boxes = obstacles
    .map(({ a: p, b: q, radius }) => {
      const t = [p, q].map((end) => dot(subtract(end, a), along));
      const n = [p, q].map((end) => dot(subtract(end, a), inwards));
      return {
        from: Math.min(...t) - radius,
        to: Math.max(...t) + radius,
        low: Math.min(...n) - radius,
        high: Math.max(...n) + radius,
      };
    })
    .filter(({ from, to, low, high }) => to > 0 && from < length && low < 0 && high > 0)
    .sort((p, q) => p.from - q.from);
  const merged: { from: number; to: number; high: number }[] = [];
  for (const { from, to, high } of boxes) {
    const last = merged[merged.length - 1];
    // Two steps aside that leave no room for two bends between them are one.
    if (last && from < last.to + 2 * leastBend) {
      last.to = Math.max(last.to, to);
      last.high = Math.max(last.high, high);
    } else merged.push({ from, to, high: Math.max(high, 2 * leastBend) });
  }
  const place = (t: number, n: number) => add(a, add(scale(along, t), scale(inwards, n)));
  return [
    a,
    ...merged.flatMap(({ from, to, high }) => [
      place(from, 0),
      place(from, high),
      place(to, high),
      place(to, 0),
    ]),
    b,
  ];
}
