import { pick, type Random } from './random.js';

/** What is known of each activity besides its dates. */
export interface Surroundings {
  /** Index of the job each belongs to. */
  readonly jobs: Int32Array;
  /** Index of the trade that does it; -1 for none. */
  readonly trades: Int32Array;
  /** Activities whose place in the order decides nothing: facts. */
  readonly settled: readonly boolean[];
}

/** So many activities are taken out of the order at most. */
const MOST = 48;

/** Draws activities that hang together: by time, by trade, by job, or around the job that finishes last. */
export function chooseNeighbourhood(around: Surroundings, starts: Int32Array, random: Random): number[] {
  const open = Array.from(starts, (_, i) => i).filter((i) => around.settled[i] !== true);
  if (open.length === 0) return [];
  const kind = random();
  const seed = open[pick(random, open.length)]!;
  if (kind < 0.35) return nearest(open, starts, starts[seed]!, random);
  if (kind < 0.6) {
    const same = open.filter((i) => around.trades[i] === around.trades[seed]);
    return nearest(same, starts, starts[seed]!, random);
  }
  if (kind < 0.8) return ofSomeJobs(open, around, starts, random);
  return aroundTheLatest(open, around, starts, random);
}

/** Those that start nearest to an instant; how many is drawn. */
function nearest(from: readonly number[], starts: Int32Array, at: number, random: Random): number[] {
  const count = 2 + pick(random, MOST - 1);
  return [...from]
    .sort((a, b) => Math.abs(starts[a]! - at) - Math.abs(starts[b]! - at) || a - b)
    .slice(0, count);
}

function ofSomeJobs(
  open: readonly number[],
  { jobs }: Surroundings,
  starts: Int32Array,
  random: Random,
): number[] {
  const chosen = new Set<number>();
  for (let k = 0; k < 3; k++) chosen.add(jobs[open[pick(random, open.length)]!]!);
  const all = open.filter((i) => chosen.has(jobs[i]!));
  return nearest(all, starts, starts[all[pick(random, all.length)]!]!, random);
}

/** The latest job's phases and those that start around one of them with the same trade: what may stand in its way. */
function aroundTheLatest(
  open: readonly number[],
  { jobs, trades }: Surroundings,
  starts: Int32Array,
  random: Random,
): number[] {
  const last = open.reduce((late, i) => (starts[i]! > starts[late]! ? i : late));
  const own = open.filter((i) => jobs[i] === jobs[last]);
  const held = own[pick(random, own.length)]!;
  const rivals = open.filter((i) => trades[i] === trades[held] || jobs[i] === jobs[last]);
  return nearest(rivals, starts, starts[held]!, random);
}
