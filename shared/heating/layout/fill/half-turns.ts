import {
  add,
  cross,
  direction,
  distance,
  dot,
  scale,
  subtract,
  type Point,
} from '../../../entry/geometry/point.js';

/** A place where a line goes back beside itself: corners number `at` and the one after. */
export interface HalfTurn {
  readonly at: number;
  /** How far it may be drawn in along its two runs, in, whatever is drawn in at their other ends. */
  readonly most: number;
}

/** The half turns of a line between runs no farther apart than `widest`, in. */
export function halfTurns(line: readonly Point[], widest: number): HalfTurn[] {
  const out: HalfTurn[] = [];
  for (let i = 1; i + 2 < line.length; i++) {
    const [a, b, c, d] = [line[i - 1]!, line[i]!, line[i + 1]!, line[i + 2]!];
    const across = distance(b, c);
    if (across > 1.6 * widest) continue;
    const [into, on, back] = [direction(a, b), subtract(c, b), direction(c, d)];
    if (dot(into, back) > -0.8 || cross(into, on) * cross(on, back) <= 0) continue;
    const most = (Math.min(distance(a, b), distance(c, d)) - across) / 2;
    if (most > 0) out.push({ at: i, most });
  }
  return out;
}

/** A line with its half turns drawn in by `by`, in, each no farther than it may. */
export function drawnIn(line: readonly Point[], turns: readonly HalfTurn[], by: number): Point[] {
  if (by <= 0) return [...line];
  const out = [...line];
  for (const { at, most } of turns) {
    const way = Math.min(by, most);
    out[at] = add(out[at]!, scale(direction(line[at]!, line[at - 1]!), way));
    out[at + 1] = add(out[at + 1]!, scale(direction(line[at + 1]!, line[at + 2]!), way));
  }
  return out;
}
