import { between, distanceToLine, type Point } from '../../entry/geometry/point.js';
import type { KeepOut } from '../../entry/geometry/site-plan.js';
import type { Field } from './field.js';
import type { Sample } from './measure/sample-path.js';

/** Where the sensor goes: between two runs, with what it was measured to keep. */
export interface SensorPlace {
  readonly at: Point;
  /** To the run on either hand, in. */
  readonly toRuns: number;
  /** To the nearest side of the field, in. */
  readonly toSide: number;
}

/** A sensor this near to a side would feel the edge, in. Common practice, no source. */
const FROM_SIDE = 12;

/**
 * Halfway between two neighbouring runs of the first field, as far from its sides as the field has, and a foot where
 * it has that much. Null when no two runs lie side by side.
 */
export function placeSensor(
  field: Field,
  samples: readonly Sample[],
  closest: number,
  widest: number,
): SensorPlace | null {
  const own = samples.filter(({ at }) => Math.abs(at.z - field.level) < 1e-6);
  const sparse = own.filter((_, i) => i % 8 === 0);
  let best: SensorPlace | null = null;
  for (const [i, one] of sparse.entries()) {
    for (const other of sparse.slice(i + 1)) {
      const away = Math.hypot(one.at.x - other.at.x, one.at.y - other.at.y);
      if (away < closest - 1e-6 || away > widest || other.along - one.along < 4 * closest) continue;
      const at = between(one.at, other.at, 0.5);
      const toSide = Math.min(...field.sides.map(({ a, b }) => distanceToLine(at, a, b)));
      const worth = Math.min(toSide, FROM_SIDE);
      if (best && worth <= Math.min(best.toSide, FROM_SIDE) + 1e-9) continue;
      if (field.keepOuts.some((out) => nearKeepOut(out, at, away / 2))) continue;
      const toRuns = Math.min(...own.map((s) => Math.hypot(s.at.x - at.x, s.at.y - at.y)));
      // Another run between the two, or a turn closing in, would touch it.
      if (toRuns < away / 2 - 0.3) continue;
      best = { at, toRuns, toSide };
    }
  }
  return best;
}

const nearKeepOut = (out: KeepOut, at: Point, room: number): boolean =>
  out.kind === 'round'
    ? Math.hypot(out.centre.x - at.x, out.centre.y - at.y) < out.radius + room
    : out.outline.some((a, i) => distanceToLine(at, a, out.outline[(i + 1) % out.outline.length]!) < room);
