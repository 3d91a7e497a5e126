import type { PlainProject } from '../network.js';

/**
 * A small project of any shape: links only from lower to higher numbers, demands within capacity.
 * @param draws whole numbers from 0 to 99 that decide everything; used round and round
 */
export function projectOf(draws: readonly number[], most: number): PlainProject {
  let at = 0;
  const draw = (below: number): number => draws[at++ % draws.length]! % below;
  const durations = Array.from({ length: 1 + draw(most) }, () => draw(7));
  const capacities = Array.from({ length: draw(6) }, () => 1 + draw(9));
  return {
    durations,
    capacities,
    demands: durations.map(() => capacities.map((all) => draw(all + 1))),
    successors: durations.map((_, i) => durations.flatMap((_, j) => (j > i && draw(100) < 25 ? [j] : []))),
  };
}

/** How many links and periods a schedule breaks, by plain counting. */
export function broken(project: PlainProject, starts: ArrayLike<number>, mirrored: boolean): number {
  const { durations, successors, demands, capacities } = project;
  let count = 0;
  successors.forEach((after, i) =>
    after.forEach((j) => {
      const [first, second] = mirrored ? [j, i] : [i, j];
      if (starts[second]! < starts[first]! + durations[first]!) count++;
    }),
  );
  const end = Math.max(...durations.map((duration, i) => starts[i]! + duration));
  for (let t = 0; t < end; t++) {
    capacities.forEach((all, r) => {
      const out = durations.reduce(
        (sum, duration, i) => sum + (starts[i]! <= t && t < starts[i]! + duration ? demands[i]![r]! : 0),
        0,
      );
      if (out > all) count++;
    });
  }
  return count;
}
