import { sortedById } from '../by-id.js';
import type { Plan, PlanInput } from '../model.js';
import { plan } from '../plan.js';
import { allOrders, tryOrders } from './all-orders.js';
import type { Decoder, Direction } from './decoder.js';
import { EngineDecoder } from './engine-decoder.js';
import { fromNothing } from './from-nothing.js';
import { inOrder } from './in-order.js';
import { neighbourhoodSearch } from './neighbourhood-search.js';
import type { Surroundings } from './neighbourhoods.js';
import { DEFAULT_WEIGHTS, objectiveOf, type Objective, type ObjectiveWeights } from './objective.js';
import { objectiveBound } from './objective-bound.js';
import { PlainDecoder } from './plain-decoder.js';
import { plainProject } from './plain-project.js';
import { populationSearch, type SearchResult } from './population-search.js';

/** What bounds an improvement and who is told of it. */
export interface ImproveOptions {
  /** Equal seeds and numbers of schedules give equal results. */
  readonly seed: number;
  /** Generation passes to spend, every one counted; without it the search goes on until it is stopped. */
  readonly schedules?: number | undefined;
  /** Asked between passes; true ends the search with the best so far. */
  readonly stop?: (() => boolean) | undefined;
  readonly onProgress?: ((progress: ImproveProgress) => void) | undefined;
  readonly weights?: ObjectiveWeights | undefined;
  /** Sees the starts of every pass over a plain project, by phase id order, counted from the end the pass began at. */
  readonly inspect?: ((starts: Int32Array, direction: Direction) => void) | undefined;
}

/** How far an improvement has come. */
export interface ImproveProgress {
  readonly schedules: number;
  /** Objective of the best plan so far. */
  readonly objective: number;
  readonly bound: number;
  /** By how many per cent the best exceeds the bound; null where the bound is zero. */
  readonly withinPercent: number | null;
}

/** What an improvement found; never worse than what it was given. */
export interface ImproveResult {
  readonly plan: Plan;
  /** Order of phases that gives the plan by `plan({ ...input, order })`: the input's own where nothing better was found. */
  readonly order: readonly string[];
  readonly before: Objective;
  readonly after: Objective;
  readonly schedules: number;
  /** No plan's objective can be less. */
  readonly bound: number;
  readonly withinPercent: number | null;
  /** True only when the bound itself is reached. */
  readonly proved: boolean;
}

/** When nobody says how many: settings of the search are made for so many passes. */
const NOMINAL_PASSES = 5000;
/** Portfolios above this are improved a part at a time. */
const SMALL = 48;

/**
 * Looks for a better plan until its passes are spent or it is stopped. A plain project is searched by passes of its own from both ends,
 * everything else by passes of the planning engine; the search is the same. What it returns is always what the engine itself makes of the
 * order found, and never worse than the plan of the input as it is.
 */
export function improve(input: PlanInput, options: ImproveOptions): ImproveResult {
  const weights = options.weights ?? DEFAULT_WEIGHTS;
  const first = plan(input);
  const before = objectiveOf(input, first, weights);
  const bound = objectiveBound(input, weights);
  const report = (schedules: number, objective: number): void =>
    options.onProgress?.({ schedules, objective, bound, withinPercent: percentOver(objective, bound) });
  const found = search(input, first, bound, { ...options, weights }, report);
  const made = plan({ ...input, order: found.order });
  const after = objectiveOf(input, made, weights);
  const better = after.total < before.total;
  const best = better ? after : before;
  return {
    plan: better ? made : first,
    order: better ? found.order : (input.order ?? []),
    before,
    after: best,
    schedules: found.schedules,
    bound,
    withinPercent: percentOver(best.total, bound),
    proved: best.total <= bound,
  };
}

/** With so few phases all orders are tried where the passes suffice. */
const FEW = 8;

/** One round of a search: from an order (or none) to a better one. */
type Round = (seed: number, passes: number, from: Float64Array | undefined, onPass: OnPass) => SearchResult;
type OnPass = (passes: number, best: number) => void;

function search(
  input: PlanInput,
  first: Plan,
  bound: number,
  options: ImproveOptions & { readonly weights: ObjectiveWeights },
  onPass: OnPass,
): { order: string[]; schedules: number } {
  const { stop } = options;
  const plain = plainProject(input);
  if (plain) {
    const decoder = inspected(new PlainDecoder(plain.project), options.inspect);
    const { keys, passes } = rounds(options, decoder.bound, onPass, (seed, passes, _from, onPass) =>
      populationSearch(decoder, { seed, passes, stop, onPass }),
    );
    return { order: inOrder(plain.ids, keys), schedules: passes };
  }
  const decoder = new EngineDecoder(input, first, bound, options.weights);
  const around = surroundings(input);
  const orders =
    decoder.activities <= FEW
      ? allOrders(predecessors(input), options.schedules ?? NOMINAL_PASSES)
      : undefined;
  if (orders && orders.length > 0) {
    const tried = tryOrders(decoder, orders, { seed: options.seed, passes: orders.length, stop, onPass });
    return { order: inOrder(decoder.ids, tried.keys), schedules: tried.passes };
  }
  const begin = { passes: Math.ceil((options.schedules ?? NOMINAL_PASSES) / 2), stop, onPass };
  const begun = fromNothing(decoder, { input, first, weights: options.weights }, begin);
  const rest = options.schedules === undefined ? undefined : options.schedules - begun.passes;
  const on: OnPass = (n, best) => onPass(begun.passes + n, Math.min(begun.fitness, best));
  if (begun.fitness <= bound || rest === 0 || stop?.() === true) {
    return { order: inOrder(decoder.ids, begun.keys), schedules: begun.passes };
  }
  const { keys, passes } = rounds(
    { ...options, schedules: rest },
    bound,
    on,
    (seed, passes, from = begun.keys, onPass) => {
      const wide = { seed, passes: Math.ceil(passes / 2), from: [from], stop, onPass };
      if (decoder.activities > SMALL) return neighbourhoodSearch(decoder, from, around, { ...wide, passes });
      const broad = populationSearch(decoder, wide);
      const left = passes - broad.passes;
      if (left < 2) return broad;
      const later: OnPass = (n, best) => onPass(broad.passes + n, best);
      const near = neighbourhoodSearch(decoder, broad.keys, around, { ...wide, passes: left, onPass: later });
      return { ...near, passes: broad.passes + near.passes };
    },
  );
  return { order: inOrder(decoder.ids, keys), schedules: begun.passes + passes };
}

/** One round where the passes are counted; round after round, each from the best so far, where only a stop ends it. */
function rounds(
  { seed, schedules, stop }: ImproveOptions,
  bound: number,
  onPass: OnPass,
  round: Round,
): SearchResult {
  let best = round(seed, schedules ?? NOMINAL_PASSES, undefined, onPass);
  for (let k = 1; schedules === undefined && best.fitness > bound && stop?.() !== true; k++) {
    const { passes, fitness } = best;
    const later: OnPass = (n, got) => onPass(passes + n, Math.min(fitness, got));
    const next = round(seed + k, NOMINAL_PASSES, best.keys, later);
    best = { ...(next.fitness < fitness ? next : best), passes: passes + next.passes };
  }
  return best;
}

/** A decoder whose every pass is shown to somebody. */
function inspected(decoder: Decoder, inspect: ImproveOptions['inspect']): Decoder {
  if (!inspect) return decoder;
  return {
    activities: decoder.activities,
    directions: decoder.directions,
    bound: decoder.bound,
    durations: decoder.durations,
    loads: decoder.loads,
    tails: (direction) => decoder.tails(direction),
    decode: (direction, keys, delay, starts) => {
      const fitness = decoder.decode(direction, keys, delay, starts);
      inspect(starts, direction);
      return fitness;
    },
  };
}

function surroundings(input: PlanInput): Surroundings {
  const phases = sortedById(input.phases);
  const jobs = new Map(input.jobs.map(({ id }, i) => [id, i]));
  const trades = [...new Set(phases.map(({ trade, crewId }) => trade ?? crewId))];
  return {
    jobs: Int32Array.from(phases, ({ jobId }) => jobs.get(jobId)!),
    trades: Int32Array.from(phases, ({ trade, crewId }) => {
      const does = trade ?? crewId;
      return does === undefined ? -1 : trades.indexOf(does);
    }),
    settled: phases.map(({ facts }) => facts?.actualStart !== undefined),
  };
}

/** What comes before each phase by links, in id order. */
function predecessors(input: PlanInput): number[][] {
  const places = new Map(sortedById(input.phases).map(({ id }, i) => [id, i]));
  const before: number[][] = input.phases.map(() => []);
  for (const { from, to } of input.links) before[places.get(to)!]!.push(places.get(from)!);
  return before;
}

function percentOver(objective: number, bound: number): number | null {
  return bound > 0 ? (100 * (objective - bound)) / bound : null;
}
