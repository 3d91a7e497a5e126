import { compareIds, sortedById } from '../by-id.js';
import type { Job, Plan, PlanInput } from '../model.js';
import { plan } from '../plan.js';
import type { EngineDecoder } from './engine-decoder.js';
import { inOrder } from './in-order.js';
import { mirroredInput } from './mirrored-input.js';
import { objectiveOf, weightOf, type ObjectiveWeights } from './objective.js';
import { parallelOrder } from './parallel-order.js';
import type { SearchOptions, SearchResult } from './population-search.js';

/** What is started from. */
export interface Beginning {
  readonly input: PlanInput;
  /** The plan of the input as it is. */
  readonly first: Plan;
  readonly weights: ObjectiveWeights;
}

/** Justifications in a row that may be of no help before the next is not tried: what the first makes worse the second often mends. */
const MISSES = 2;

/**
 * Begins from nothing: the better of serial and parallel generation by latest finish, on the tighter of due date and tail, then double
 * justification, again and again while that helps; and the same from one job after the other. Only what does not make the whole objective
 * worse is kept, so that the result is never worse than the plan it is given. Generations by `parallelOrder` and backward ones count as
 * passes too.
 */
export function fromNothing(
  decoder: EngineDecoder,
  { input, first, weights }: Beginning,
  options: Pick<SearchOptions, 'passes' | 'stop' | 'onPass'>,
): SearchResult {
  let best = { plan: first, keys: keysOf(first), fitness: objectiveOf(input, first, weights).total };
  let passes = 0;
  const may = (needed: number): boolean =>
    passes + needed <= options.passes && best.fitness > decoder.bound && options.stop?.() !== true;
  const count = (): void => options.onPass?.(++passes, best.fitness);
  const forward = (keys: Float64Array): { made: Plan; better: boolean } => {
    const made = plan({ ...input, order: inOrder(decoder.ids, keys) });
    const fitness = objectiveOf(input, made, weights).total;
    const better = fitness < best.fitness;
    if (fitness <= best.fitness) best = { plan: made, keys, fitness };
    count();
    return { made, better };
  };
  const justify = (from: Plan): void => {
    let current = from;
    for (let misses = 0; misses < MISSES && may(2);) {
      const keys = backward(input, current);
      count();
      const { made, better } = forward(keys);
      current = made;
      misses = better ? 0 : misses + 1;
    }
  };
  const tails = decoder.tails();
  const byLatestFinish = Float64Array.from(decoder.durations, (length, i) => length - tails[i]!);
  if (may(1)) forward(byLatestFinish);
  if (may(2)) {
    const keys = parallelOrder(input, byLatestFinish, decoder.durations);
    count();
    forward(keys);
  }
  justify(best.plan);
  if (may(1)) justify(forward(jobAfterJob(input, first)).made);
  return { keys: best.keys, fitness: best.fitness, passes };
}

/** One job after the other, those with least work for their weight first; within a job as it is planned now. */
function jobAfterJob(input: PlanInput, first: Plan): Float64Array {
  const work = new Map<string, number>();
  for (const { jobId, duration } of input.phases) work.set(jobId, (work.get(jobId) ?? 0) + duration.slots);
  const turn = (job: Job): number => work.get(job.id)! / weightOf(job);
  const jobs = input.jobs
    .filter(({ id }) => work.has(id))
    .sort((a, b) => turn(a) - turn(b) || compareIds(a.id, b.id));
  const turns = new Map(jobs.map(({ id }, i) => [id, i]));
  return Float64Array.from(
    first.phases,
    ({ jobId, start }) => turns.get(jobId)! * input.horizon + (start ?? 0),
  );
}

/** Starts when everything is pushed as late as its job's finish allows; what cannot be pushed stays where it is. */
function backward(input: PlanInput, made: Plan): Float64Array {
  const mirror = mirroredInput(input, made);
  const late = new Map(plan(mirror.input).phases.map(({ id, finish }) => [id, finish]));
  const now = keysOf(made);
  return Float64Array.from(sortedById(input.phases), ({ id }, i) => {
    const finish = late.get(id);
    return finish === undefined || finish === null ? now[i]! : mirror.end - finish;
  });
}

/** Where each phase starts now, in id order; what has no place comes last. */
export function keysOf(made: Plan): Float64Array {
  return Float64Array.from(made.phases, ({ start }) => start ?? Number.MAX_SAFE_INTEGER);
}
