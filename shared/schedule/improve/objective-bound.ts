import { crewEnergy } from '../bounds/crew-energy.js';
import { sumOfFinishes } from '../bounds/sum-of-finishes.js';
import { canDo } from '../can-do.js';
import { plan } from '../plan.js';
import type { Calendar, Crew, Phase, PlanInput } from '../model.js';
import { objectiveOf, type ObjectiveWeights } from './objective.js';

/**
 * What no plan's objective can be less than: the finishes and lateness of a plan in which nothing waits for crews or equipment. Every phase
 * has a crew of its own that works whenever one of its candidates does, equipment is not counted, and no lag has a most. Disturbance and
 * crew moves count as none. The finishes together are also held against the open hours of the crews.
 */
export function objectiveBound(input: PlanInput, weights: ObjectiveWeights): number {
  const alone = plan(withoutRivals(input));
  const { lateness } = objectiveOf(input, alone, weights);
  const placed = new Set(alone.phases.flatMap(({ id, start }) => (start === null ? [] : [id])));
  const jobs = alone.jobs.flatMap(({ id, finish }) => (finish === null ? [] : [{ id, finish }]));
  const inTurn = crewEnergy(
    input,
    jobs.map(({ id }) => id),
    ({ id }) => placed.has(id),
  );
  const finishes = jobs.map(({ finish }) => finish);
  return lateness * weights.lateness + sumOfFinishes(finishes, inTurn, input.now) * weights.finish;
}

/** The input with hours, weather, links, gates, visits and facts as they are, and nobody to wait for. */
function withoutRivals(input: PlanInput): PlanInput {
  const calendars = new Map<string, Calendar>();
  const crews: Crew[] = [];
  const phases = input.phases.map((phase): Phase => {
    const { trade, crewId, holds: _holds, ...rest } = phase;
    if (trade === undefined && crewId === undefined) return rest;
    const candidates = input.crews.filter((crew) => canDo(crew, phase));
    if (candidates.length === 0) return { ...rest, trade };
    const together = [...new Set(candidates.map(({ calendarId }) => calendarId))].sort();
    const calendarId = `any of ${JSON.stringify(together)}`;
    if (!calendars.has(calendarId)) {
      const open = input.calendars.flatMap(({ id, open }) => (together.includes(id) ? open : []));
      calendars.set(calendarId, { id: calendarId, open });
    }
    crews.push({ id: `for ${phase.id}`, trades: [], calendarId });
    return withOwnCrew(rest, `for ${phase.id}`);
  });
  return {
    ...input,
    phases,
    crews,
    calendars: [...input.calendars, ...calendars.values()],
    links: input.links.map(({ mostLag: _most, mostLagIn: _in, ...link }) => link),
  };
}

/** Facts and commitments that name a crew name this one. */
function withOwnCrew(phase: Phase, crewId: string): Phase {
  const { facts, commitment, previous, ...rest } = phase;
  return {
    ...rest,
    crewId,
    ...(facts && { facts: { ...facts, crewId } }),
    ...(commitment && { commitment: { start: commitment.start, finish: commitment.finish } }),
    ...(previous && { previous: { start: previous.start } }),
  };
}
