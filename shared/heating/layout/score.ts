import { between, distance, type Point } from '../../entry/geometry/point.js';
import { PointGrid } from './point-grid.js';
import type { Field } from './field.js';
import { freeSpans, zoneOf } from './zone.js';

/** How well a line fills a field: less is better. */
export function bareness(field: Field, line: readonly Point[], spacing: number, least: number): number {
  const zone = zoneOf(field, 0, least);
  const grid = new PointGrid(2 * spacing);
  line.slice(1).forEach((b, i) => {
    const a = line[i]!;
    const parts = Math.max(1, Math.ceil((2 * distance(a, b)) / spacing));
    for (let k = 0; k <= parts; k++) grid.put(between(a, b, k / parts));
  });
  const ys = zone.outline.map((p) => p.y);
  const pitch = Math.max(spacing / 2, 1);
  let [worst, sum, count] = [0, 0, 0];
  for (let y = Math.min(...ys); y <= Math.max(...ys); y += pitch) {
    for (const [from, to] of freeSpans(zone, [], y, y)) {
      for (let x = from; x <= to; x += pitch) {
        const away = grid.nearest({ x, y });
        worst = Math.max(worst, away);
        sum += Math.max(0, away - 0.75 * spacing);
        count++;
      }
    }
  }
  return worst + (4 * sum) / Math.max(1, count);
}
