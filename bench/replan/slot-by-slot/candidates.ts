import type { Crew, Phase, PlanInput } from '../../../shared/schedule/model.js';

/** Crews that may do a phase, by id; none for a wait or a milestone, for which `needsCrew` is false. */
export function candidatesOf(input: PlanInput, phase: Phase): Crew[] {
  if (!needsCrew(phase)) return [];
  return input.crews
    .filter(({ id }) => phase.crewId === undefined || phase.crewId === id)
    .filter(({ trades }) => phase.trade === undefined || trades.includes(phase.trade))
    .sort(byId);
}

/** Whether anybody has to do it. */
export function needsCrew({ duration, trade, crewId }: Phase): boolean {
  return duration.slots > 0 && (trade !== undefined || crewId !== undefined);
}

/** Id order, by code unit. */
export function byId(a: { readonly id: string }, b: { readonly id: string }): number {
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}
