import { distanceToLine } from '../../../entry/geometry/point.js';
import type { Field } from '../field.js';
import { roomTo } from './room.js';
import type { Samples } from './sample-path.js';

/** Least room between the cable and what it keeps away from, beyond what is asked, in; negative is a fault. */
export interface Clearances {
  /** To sides of its own field, but for where it passes on to another field. */
  readonly sides: number;
  readonly keepOuts: number;
}

/**
 * Clearances of all places of the cable; `held` says in which field each lies, -1 in none. Beside the line where two fields
 * meet only other sides are looked at.
 */
export function clearances(
  fields: readonly Field[],
  shared: readonly ReadonlySet<number>[],
  { count, x, y }: Samples,
  held: Int32Array,
): Clearances {
  let [sides, keepOuts] = [Infinity, Infinity];
  for (let i = 0; i < count; i++) {
    const field = fields[held[i]!];
    if (!field) continue;
    const meets = shared[held[i]!]!;
    const at = { x: x[i]!, y: y[i]! };
    for (const [k, { a, b, setback }] of field.sides.entries()) {
      if (!meets.has(k)) sides = Math.min(sides, distanceToLine(at, a, b) - setback);
    }
    for (const out of field.keepOuts) keepOuts = Math.min(keepOuts, roomTo(out, at) - out.clearance);
  }
  return { sides, keepOuts };
}
