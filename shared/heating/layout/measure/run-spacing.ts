import { Buckets } from './buckets.js';
import type { Samples } from './sample-path.js';

/**
 * The least distance between parts of the cable that are farther from each other along it than a half turn at spacing
 * `least`, in space, in. Looks no farther than `reach`; infinite when nothing lies within it.
 */
export function closestRuns({ count, x, y, z, along }: Samples, least: number, reach: number): number {
  const halfTurn = (Math.PI / 2) * least;
  const buckets = new Buckets(x, y, count, reach);
  let best = reach * reach;
  let found = false;
  for (let i = 0; i < count; i++) {
    buckets.near(x[i]!, y[i]!, (j) => {
      if (along[i]! - along[j]! < halfTurn) return;
      const [dx, dy, dz] = [x[i]! - x[j]!, y[i]! - y[j]!, z[i]! - z[j]!];
      const away = dx * dx + dy * dy + dz * dz;
      if (away > best) return;
      best = away;
      found = true;
    });
    buckets.put(i);
  }
  return found ? Math.sqrt(best) : Infinity;
}
