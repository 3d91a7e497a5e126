import { inside } from '../../entry/geometry/outline.js';
import { between, distanceToLine, type Point } from '../../entry/geometry/point.js';
import type { Field } from './field.js';
import { Buckets } from './measure/buckets.js';
import { roomTo } from './measure/room.js';
import type { Samples } from './measure/sample-path.js';

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

/** Every so many samples one is looked at. */
const SPARSE = 8;

/**
 * Halfway between two neighbouring runs of the first field, as far from its sides as the field has, and a foot where
 * it has that much. Null when no two runs lie side by side.
 */
export function placeSensor(
  field: Field,
  samples: Samples,
  closest: number,
  widest: number,
): SensorPlace | null {
  const { count, x, y, z, along } = samples;
  const buckets = new Buckets(x, y, count, widest);
  const outline = field.sides.map(({ a }) => a);
  const sparse: number[] = [];
  for (let i = 0; i < count; i++) {
    if (Math.abs(z[i]! - field.level) > 1e-6 || !inside(outline, { x: x[i]!, y: y[i]! })) continue;
    buckets.put(i);
    if (i % SPARSE === 0) sparse.push(i);
  }
  const toSide = (at: Point) => Math.min(...field.sides.map(({ a, b }) => distanceToLine(at, a, b)));
  const away = (i: number, at: Point) => Math.hypot(x[i]! - at.x, y[i]! - at.y);
  const inwards = sparse
    .map((i) => ({ i, worth: Math.min(toSide({ x: x[i]!, y: y[i]! }), FROM_SIDE + closest) }))
    .sort((p, q) => q.worth - p.worth || p.i - q.i);
  let best: SensorPlace | null = null;
  // Where none of the sparse samples lies straight across from another one, any may.
  for (const every of [SPARSE, 1]) {
    for (const { i } of inwards) {
      // The first place found a foot from every side is as good as any.
      if (best && best.toSide >= FROM_SIDE) return best;
      const one = { x: x[i]!, y: y[i]! };
      const near: number[] = [];
      buckets.near(one.x, one.y, (j) => {
        if (away(j, one) <= widest) near.push(j);
      });
      for (const j of near) {
        if (j % every !== 0 || away(j, one) < closest - 0.02 || Math.abs(along[j]! - along[i]!) < 4 * closest)
          continue;
        const at = between(one, { x: x[j]!, y: y[j]! }, 0.5);
        const side = toSide(at);
        if (best && Math.min(side, FROM_SIDE) <= Math.min(best.toSide, FROM_SIDE) + 1e-9) continue;
        if (field.keepOuts.some((out) => roomTo(out, at) < away(j, one) / 2)) continue;
        const toRuns = near.reduce((least, k) => Math.min(least, away(k, at)), Infinity);
        // Another run between the two, or a turn closing in, would touch it.
        if (toRuns < away(j, one) / 2 - 0.3) continue;
        best = { at, toRuns, toSide: side };
      }
    }
  }
  return best;
}
