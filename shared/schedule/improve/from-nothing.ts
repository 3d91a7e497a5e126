import { sortedById } from '../by-id.js';
import type { Plan, PlanInput } from '../model.js';
import { plan } from '../plan.js';
import type { EngineDecoder } from './engine-decoder.js';
import { inOrder } from './in-order.js';
import { mirroredInput } from './mirrored-input.js';
import { objectiveOf, type ObjectiveWeights } from './objective.js';
import { parallelOrder } from './parallel-order.js';
import type { SearchOptions, SearchResult } from './population-search.js';

/** What is started from. */
export interface Beginning {
  readonly input: PlanInput;
  /** The plan of the input as it is. */
  readonly first: Plan;
  readonly weights: ObjectiveWeights;
}

/**
 * Begins from nothing: the better of serial and parallel generation by latest finish, on the tighter of due date and tail; then double
 * justification, again while that helps. A step is kept only when the whole objective does not get worse, so that the result is never
 * worse than the plan it is given. Generations by `parallelOrder` and backward ones count as passes too.
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
  const forward = (keys: Float64Array): boolean => {
    const made = plan({ ...input, order: inOrder(decoder.ids, keys) });
    const fitness = objectiveOf(input, made, weights).total;
    const better = fitness < best.fitness;
    if (fitness <= best.fitness) best = { plan: made, keys, fitness };
    count();
    return better;
  };
  const tails = decoder.tails();
  const byLatestFinish = Float64Array.from(decoder.durations, (length, i) => length - tails[i]!);
  if (may(1)) forward(byLatestFinish);
  if (may(2)) {
    const keys = parallelOrder(input, byLatestFinish, decoder.durations);
    count();
    forward(keys);
  }
  for (let helps = true; helps && may(2);) {
    const keys = backward(input, best.plan);
    count();
    helps = forward(keys);
  }
  return { keys: best.keys, fitness: best.fitness, passes };
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
