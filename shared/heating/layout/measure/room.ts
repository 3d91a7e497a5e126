import { inside } from '../../../entry/geometry/outline.js';
import { distance, distanceToLine, type Point } from '../../../entry/geometry/point.js';
import type { KeepOut } from '../../../entry/geometry/site-plan.js';
import type { Field } from '../field.js';

/** From a place to the edge of what the cable keeps away from, in; negative inside it. */
export function roomTo(out: KeepOut, at: Point): number {
  if (out.kind === 'round') return distance(out.centre, at) - out.radius;
  const away = Math.min(
    ...out.outline.map((a, i) => distanceToLine(at, a, out.outline[(i + 1) % out.outline.length]!)),
  );
  return inside(out.outline, at) ? -away : away;
}

/** Whether a place lies on a field, inside its setbacks and clear of its keep-outs by `around` at least, in. */
export function mayLie({ sides, keepOuts }: Field, at: Point, around: number): boolean {
  let within = false;
  for (const { a, b, setback } of sides) {
    // Asked of every place of a grid: no calls here.
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const part = ((at.x - a.x) * dx + (at.y - a.y) * dy) / (dx * dx + dy * dy);
    const on = part < 0 ? 0 : part > 1 ? 1 : part;
    if ((at.x - a.x - dx * on) ** 2 + (at.y - a.y - dy * on) ** 2 < setback * setback) return false;
    // Counts the sides that a line to the right crosses.
    if (a.y > at.y !== b.y > at.y && at.x < a.x + ((at.y - a.y) / (b.y - a.y)) * (b.x - a.x))
      within = !within;
  }
  return within && keepOuts.every((out) => roomTo(out, at) >= Math.max(out.clearance, around));
}
