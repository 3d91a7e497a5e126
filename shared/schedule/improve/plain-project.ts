import { sortedById } from '../by-id.js';
import type { Phase, PlanInput } from '../model.js';
import type { PlainProject } from './network.js';

/** A plain project and the phase behind each of its activities. */
export interface PlainInput {
  readonly project: PlainProject;
  /** Phase ids, activity by activity. */
  readonly ids: readonly string[];
}

/**
 * The input as a plain project, where it is one: a single job without promises, finish-start links without lag, equipment by quantity,
 * time always open, and enough of it. Undefined when crews, hours, weather, gates or facts have a say: then only the engine knows the dates.
 */
export function plainProject(input: PlanInput): PlainInput | undefined {
  if (input.now !== 0 || input.inspections.length > 0 || input.jobs.length !== 1) return undefined;
  if (input.jobs[0]!.due !== undefined || !input.phases.every(isPlain)) return undefined;
  if (input.links.some((link) => link.kind !== 'FS' || link.lag !== 0 || link.mostLag !== undefined))
    return undefined;
  const pools = sortedById(input.pools);
  const phases = sortedById(input.phases);
  const places = new Map(phases.map(({ id }, i) => [id, i]));
  const successors = phases.map(() => new Set<number>());
  for (const { from, to } of input.links) {
    if (!places.has(from) || !places.has(to)) return undefined;
    successors[places.get(from)!]!.add(places.get(to)!);
  }
  const demands = phases.map((phase) =>
    demandsOf(
      phase,
      pools.map(({ id }) => id),
    ),
  );
  if (demands.some((row) => row.some((taken, r) => taken > pools[r]!.quantity))) return undefined;
  const durations = phases.map(({ duration }) => duration.slots);
  if (durations.reduce((sum, slots) => sum + slots, 0) > input.horizon) return undefined;
  return {
    ids: phases.map(({ id }) => id),
    project: {
      durations,
      successors: successors.map((after) => [...after]),
      demands,
      capacities: pools.map(({ quantity }) => quantity),
    },
  };
}

function isPlain(phase: Phase): boolean {
  const { trade, crewId, calendarId, weatherIds, holds, gates, facts, commitment, previous } = phase;
  return (
    [trade, crewId, calendarId, facts, commitment, previous].every((part) => part === undefined) &&
    (weatherIds ?? []).length === 0 &&
    (gates ?? []).length === 0 &&
    (holds ?? []).every(({ untilPhaseId }) => untilPhaseId === undefined)
  );
}

function demandsOf(phase: Phase, poolIds: readonly string[]): number[] {
  const taken = new Map<string, number>();
  for (const { poolId, quantity } of phase.holds ?? [])
    taken.set(poolId, (taken.get(poolId) ?? 0) + quantity);
  return poolIds.map((id) => taken.get(id) ?? 0);
}
