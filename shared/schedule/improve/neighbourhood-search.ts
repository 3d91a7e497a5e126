import type { Decoder } from './decoder.js';
import { chooseNeighbourhood, type Surroundings } from './neighbourhoods.js';
import { seededRandom } from './random.js';
import type { SearchOptions, SearchResult } from './population-search.js';

/** Worse orders by so small a share are accepted now and then, so that the search does not sit in the first hollow. */
const SLACK = 2e-4;

/**
 * Large-neighbourhood search for portfolios: part of the order is taken out and put back another way, the rest stays as it is. What is
 * taken out together is what hangs together: a stretch of time, a crew's work, some jobs, or what lies around the latest job.
 *
 * @param first keys of the order to begin with
 * @param around what is known of where phases belong, read from the plan of the best order so far
 */
export function neighbourhoodSearch(
  decoder: Decoder,
  first: Float64Array,
  around: Surroundings,
  options: SearchOptions,
): SearchResult {
  const random = seededRandom(options.seed);
  const starts = new Int32Array(decoder.activities);
  let current = ranked(first);
  let fitness = decoder.decode(0, current, Infinity, starts);
  let best = { keys: current, fitness };
  let where = Int32Array.from(starts);
  let passes = 1;
  options.onPass?.(passes, best.fitness);
  while (passes < options.passes && best.fitness > decoder.bound && !options.stop?.()) {
    const moved = chooseNeighbourhood(around, where, random);
    const keys = reordered(current, moved, where);
    const got = decoder.decode(0, keys, Infinity, starts);
    passes++;
    if (got <= fitness || (got - best.fitness < SLACK * Math.abs(best.fitness) && random() < 0.1)) {
      current = keys;
      fitness = got;
      where = Int32Array.from(starts);
    }
    if (got < best.fitness) best = { keys, fitness: got };
    options.onPass?.(passes, best.fitness);
  }
  return { ...best, passes };

  /** What was taken out goes back to the same places of the order, by a rule drawn anew; equal wishes keep their order. */
  function reordered(keys: Float64Array, moved: readonly number[], at: Int32Array): Float64Array {
    const rule = random();
    const places = moved.map((i) => keys[i]!).sort((a, b) => a - b);
    const byTail = decoder.tails(0);
    const noise = moved.map(() => random());
    const spread = decoder.durations.reduce((most, length) => Math.max(most, length), 1);
    const turns = new Map<number, number>();
    const turnOf = (job: number): number => {
      if (!turns.has(job)) turns.set(job, random());
      return turns.get(job)!;
    };
    const wish = moved.map((i, k) => {
      if (rule < 0.3) return noise[k]!;
      if (rule < 0.6) return -byTail[i]! + noise[k]! * spread;
      if (rule < 0.9) return at[i]! + (noise[k]! - 0.5) * 8 * spread;
      return turnOf(around.jobs[i]!);
    });
    const sorted = moved
      .map((i, k) => ({ i, wish: wish[k]! }))
      .sort((a, b) => a.wish - b.wish || keys[a.i]! - keys[b.i]!);
    const next = Float64Array.from(keys);
    sorted.forEach(({ i }, k) => (next[i] = places[k]!));
    return next;
  }
}

/** Keys as places in the order, so that they can be exchanged. */
function ranked(keys: Float64Array): Float64Array {
  const places = Array.from(keys, (_, i) => i).sort((a, b) => keys[a]! - keys[b]! || a - b);
  const ranks = new Float64Array(keys.length);
  places.forEach((i, rank) => (ranks[i] = rank));
  return ranks;
}
