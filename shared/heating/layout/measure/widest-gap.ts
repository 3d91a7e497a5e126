import type { Point } from '../../../entry/geometry/point.js';
import type { Field } from '../field.js';
import { PointGrid } from '../point-grid.js';
import { freeSpans, zoneOf } from '../zone.js';
import type { Sample } from './sample-path.js';

/** The widest place inside the setbacks of a field where no cable lies. */
export interface Gap {
  /** Across, in: twice the way from its middle to the nearest cable. */
  readonly across: number;
  readonly at: Point;
}

/** Looks for the widest gap of a field on a grid of `pitch` inches, with the lines of the setbacks on it. */
export function widestGap(field: Field, samples: readonly Sample[], least: number, pitch: number): Gap {
  const zone = zoneOf(field, 0, least);
  const grid = new PointGrid(3);
  for (const { at } of samples) if (Math.abs(at.z - field.level) < 1e-6) grid.put(at);
  const ys = zone.outline.map((p) => p.y);
  let widest: Gap = { across: 0, at: zone.outline[0]! };
  const look = (x: number, y: number): void => {
    const across = 2 * grid.nearest({ x, y });
    if (across > widest.across) widest = { across, at: { x, y } };
  };
  for (let y = Math.min(...ys); y <= Math.max(...ys); y += pitch) {
    for (const [from, to] of freeSpans(zone, [], y, y)) {
      for (let x = from; x < to; x += pitch) look(x, y);
      look(to, y);
    }
  }
  return widest;
}
