import type { Sample } from './sample-path.js';

/** Two places of the cable that lie close though the cable between them is long. */
interface Closest {
  readonly apart: number;
  readonly one: Sample;
  readonly other: Sample;
}

/**
 * The least distance between parts of the cable that are farther from each other along it than a half turn at spacing
 * `least`, in space, in. Looks no farther than `reach`; null when nothing lies within it.
 */
export function closestRuns(samples: readonly Sample[], least: number, reach: number): Closest | null {
  const halfTurn = (Math.PI / 2) * least;
  const cells = new Map<number, Sample[]>();
  const cell = (v: number) => Math.floor(v / reach) + 5000;
  const key = (i: number, j: number) => i * 20_000 + j;
  let best: Closest | null = null;
  for (const sample of samples) {
    const [i, j] = [cell(sample.at.x), cell(sample.at.y)];
    for (let di = -1; di <= 1; di++) {
      for (let dj = -1; dj <= 1; dj++) {
        for (const other of cells.get(key(i + di, j + dj)) ?? []) {
          if (sample.along - other.along < halfTurn) continue;
          const [p, q] = [sample.at, other.at];
          const apart = Math.hypot(p.x - q.x, p.y - q.y, p.z - q.z);
          if (apart <= reach && (best === null || apart < best.apart))
            best = { apart, one: other, other: sample };
        }
      }
    }
    const here = cells.get(key(i, j));
    if (here) here.push(sample);
    else cells.set(key(i, j), [sample]);
  }
  return best;
}
