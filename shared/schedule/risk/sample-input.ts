import type { Phase, PlanInput } from '../model.js';
import { normalBelow } from '../three-point.js';
import { BetaPert } from './beta-pert.js';
import type { Draws } from './draws.js';
import type { RiskModel, Sources } from './risk-model.js';
import { sampleWeather } from './sample-weather.js';

/** Distributions compiled once for all samples. */
export type Distributions = ReadonlyMap<string, BetaPert>;

/** @throws RangeError when an estimate is out of order */
export function distributionsOf(model: RiskModel): Distributions {
  return new Map(Object.entries(model.durations).map(([id, estimate]) => [id, new BetaPert(estimate)]));
}

/** The input as one sample has it: drawn durations and weather where their source is at work, expected ones where it is not. */
export function sampleInput(
  input: PlanInput,
  model: RiskModel,
  distributions: Distributions,
  sources: Sources,
  draws: Draws,
): PlanInput {
  const company = draws.normal('company');
  const jobs = new Map<string, number>();
  const ofJob = (id: string): number => {
    if (!jobs.has(id)) jobs.set(id, draws.normal(`job ${id}`));
    return jobs.get(id)!;
  };
  const { companyShare, jobShare } = model;
  const own = Math.sqrt(1 - companyShare - jobShare);
  const phases = sources.durations
    ? input.phases.map((phase) => {
        const distribution = distributions.get(phase.id);
        if (!distribution || phase.facts?.actualFinish !== undefined) return phase;
        const z =
          Math.sqrt(companyShare) * company +
          Math.sqrt(jobShare) * ofJob(phase.jobId) +
          own * draws.normal(`phase ${phase.id}`);
        return taking(phase, Math.max(1, Math.round(distribution.quantile(normalBelow(z)))));
      })
    : input.phases;
  const weather =
    sources.weather && model.weather
      ? sampleWeather(input.weather, model.weather, input.horizon, draws)
      : input.weather;
  return { ...input, phases, weather };
}

/** A phase with another duration; one that has begun keeps the share of it that is left. */
function taking(phase: Phase, slots: number): Phase {
  const { duration, facts } = phase;
  const share = duration.slots === 0 ? 1 : slots / duration.slots;
  return {
    ...phase,
    duration: { ...duration, slots },
    ...(facts?.remaining === undefined
      ? {}
      : { facts: { ...facts, remaining: Math.round(facts.remaining * share) } }),
  };
}
