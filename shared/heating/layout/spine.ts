import {
  between,
  direction,
  distance,
  distanceToLine,
  dot,
  subtract,
  type Point,
} from '../../entry/geometry/point.js';
import { detour } from './detour.js';
import type { Capsule } from './capsule.js';
import type { RingSide } from './inner-ring.js';

/** A place on the line along the setbacks. */
export interface RingPlace {
  readonly at: Point;
  /** Number of the ring's side it lies on. */
  readonly on: number;
}

/** Both ways around the ring from one place to another. */
export function waysAround(ring: readonly RingSide[], from: RingPlace, to: RingPlace): Point[][] {
  const n = ring.length;
  const forward: Point[] = [from.at];
  const straight =
    from.on === to.on ? dot(subtract(to.at, from.at), subtract(ring[from.on]!.b, ring[from.on]!.a)) : 0;
  if (from.on !== to.on || straight < 0) {
    for (let k = from.on, first = true; first || k !== to.on; k = (k + 1) % n, first = false)
      forward.push(ring[k]!.b);
  }
  forward.push(to.at);
  const backward: Point[] = [from.at];
  if (from.on !== to.on || straight >= 0) {
    for (let k = from.on, first = true; first || k !== to.on; k = (k - 1 + n) % n, first = false)
      backward.push(ring[k]!.a);
  }
  backward.push(to.at);
  return [withoutRepeats(forward), withoutRepeats(backward)].filter((way) => way.length >= 2);
}

/** A way around with what stands on it led around; the field lies on the `hand` of it. */
export function aroundObstacles(
  way: readonly Point[],
  hand: 1 | -1,
  obstacles: readonly Capsule[],
  leastBend: number,
): Point[] {
  const points = way.slice(1).flatMap((b, i) => {
    const a = way[i]!;
    return hand === 1 ? detour(a, b, obstacles, leastBend) : detour(b, a, obstacles, leastBend).reverse();
  });
  return withoutRepeats(points);
}

/** The place of the ring's side that is straight across from `p`, kept away from its ends unless it is one of them. */
export function acrossFrom(
  ring: readonly RingSide[],
  side: number,
  p: Point,
  least: number,
): RingPlace | null {
  const on = ring.findIndex((ringSide) => ringSide.side === side);
  if (on < 0) return null;
  const { a, b } = ring[on]!;
  const length = distance(a, b);
  const part = dot(subtract(p, a), direction(a, b));
  const snapped = part < least ? 0 : part > length - least ? length : part;
  return { at: between(a, b, snapped / length), on };
}

/** Whether a line keeps out of all obstacles. */
export const isClear = (way: readonly Point[], obstacles: readonly Capsule[]): boolean =>
  way
    .slice(1)
    .every((b, i) => obstacles.every((capsule) => apart(way[i]!, b, capsule) >= capsule.radius - 1e-5));

function apart(a: Point, b: Point, { a: c, b: d }: Capsule): number {
  const [u, v, w] = [subtract(b, a), subtract(d, c), subtract(c, a)];
  const turn = u.x * v.y - u.y * v.x;
  if (Math.abs(turn) > 1e-12) {
    const t = (w.x * v.y - w.y * v.x) / turn;
    const s = (w.x * u.y - w.y * u.x) / turn;
    if (t >= 0 && t <= 1 && s >= 0 && s <= 1) return 0;
  }
  return Math.min(
    distanceToLine(a, c, d),
    distanceToLine(b, c, d),
    distanceToLine(c, a, b),
    distanceToLine(d, a, b),
  );
}

/** Neighbours that are one place are made one. */
export const withoutRepeats = (points: readonly Point[]): Point[] =>
  points.filter((p, i) => i === 0 || distance(p, points[i - 1]!) > 1e-6);
