import { distance, distanceToLine } from '../../../entry/geometry/point.js';
import { inside } from '../../../entry/geometry/outline.js';
import type { KeepOut } from '../../../entry/geometry/site-plan.js';
import type { Field } from '../field.js';
import type { Sample } from './sample-path.js';

/** Least room between the cable and what it keeps away from, beyond what is asked, in; negative is a fault. */
export interface Clearances {
  /** To sides of its own field, but for where it passes on to another field. */
  readonly sides: number;
  readonly keepOuts: number;
}

/** Which field a place of the cable lies in: the one whose surface holds it at its height. */
const fieldAt = (fields: readonly Field[], { at }: Sample): Field | undefined =>
  fields.find(
    (field) =>
      Math.abs(field.level - at.z) < 1e-6 &&
      inside(
        field.sides.map(({ a }) => a),
        at,
      ),
  );

/** Clearances of all places of the cable. Beside the line where two fields meet only other sides are looked at. */
export function clearances(
  fields: readonly Field[],
  shared: readonly ReadonlySet<number>[],
  samples: readonly Sample[],
): Clearances {
  let [sides, keepOuts] = [Infinity, Infinity];
  for (const sample of samples) {
    const field = fieldAt(fields, sample);
    if (!field) continue;
    const meets = shared[fields.indexOf(field)]!;
    field.sides.forEach(({ a, b, setback }, i) => {
      if (!meets.has(i)) sides = Math.min(sides, distanceToLine(sample.at, a, b) - setback);
    });
    for (const out of field.keepOuts) keepOuts = Math.min(keepOuts, roomTo(out, sample) - out.clearance);
  }
  return { sides, keepOuts };
}

function roomTo(out: KeepOut, { at }: Sample): number {
  if (out.kind === 'round') return distance(out.centre, at) - out.radius;
  const away = Math.min(
    ...out.outline.map((a, i) => distanceToLine(at, a, out.outline[(i + 1) % out.outline.length]!)),
  );
  return inside(out.outline, at) ? -away : away;
}
