import { crewEnergy } from '../bounds/crew-energy.js';
import { greatest } from '../bounds/in-turn.js';
import { longestLead } from '../bounds/open-time.js';
import { poolEnergy } from '../bounds/pool-energy.js';
import { sumOfFinishes } from '../bounds/sum-of-finishes.js';
import { canDo } from '../can-do.js';
import { CompiledCalendar } from '../compiled-calendar.js';
import { toFinish } from '../link-lag.js';
import { plan } from '../plan.js';
import type { Calendar, Crew, Link, Phase, PlanInput } from '../model.js';
import { objectiveOf, type ObjectiveWeights } from './objective.js';

/**
 * What no plan's objective can be less than: the finishes and lateness of a plan in which nothing waits for crews or equipment. Every phase
 * has a crew of its own that works whenever one of its candidates does, equipment is not counted, and no lag has a most. Disturbance and
 * crew moves count as none. The finishes together are also held against the open hours of the crews and the equipment there is.
 */
export function objectiveBound(input: PlanInput, weights: ObjectiveWeights): number {
  const alone = plan(withoutRivals(input));
  const { lateness } = objectiveOf(input, alone, weights);
  const placed = new Set(alone.phases.flatMap(({ id, start }) => (start === null ? [] : [id])));
  const jobs = alone.jobs.flatMap(({ id, finish }) => (finish === null ? [] : [{ id, finish }]));
  const ids = jobs.map(({ id }) => id);
  const counts = ({ id }: Phase): boolean => placed.has(id);
  const inTurn = greatest(crewEnergy(input, ids, counts), poolEnergy(input, ids, counts));
  const finishes = jobs.map(({ finish }) => finish);
  return lateness * weights.lateness + sumOfFinishes(finishes, inTurn, input.now) * weights.finish;
}

/** The input with hours, weather, links, gates, visits and facts as they are, and nobody to wait for. */
function withoutRivals(input: PlanInput): PlanInput {
  const calendars = new Map<string, Calendar>();
  const crews: Crew[] = [];
  const byId = new Map(input.phases.map((phase) => [phase.id, phase]));
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
    links: input.links.flatMap((link) => withinAnyHours(input, link, byId.get(link.to)!)),
  };
}

/**
 * A link as it binds whichever crew works. Where candidates differ in their hours, the crew that works in all of them is ahead of each, and so
 * two kinds of link could bind it more than them: a lead in working time, which for one of them goes back over nights that are open to another,
 * becomes the longest that it can be by the clock; a link to the finish of interruptible work is left out, as who takes longer may start sooner.
 */
function withinAnyHours(
  input: PlanInput,
  { mostLag: _most, mostLagIn: _in, ...link }: Link,
  to: Phase,
): Link[] {
  const { duration, trade, crewId } = to;
  if (duration.slots === 0 || (trade === undefined && crewId === undefined)) return [link];
  const able = new Set(input.crews.filter((crew) => canDo(crew, to)).map(({ calendarId }) => calendarId));
  if (able.size < 2) return [link];
  if (toFinish(link.kind) && duration.kind === 'work' && duration.mode === 'interruptible') return [];
  if (link.lag >= 0 || link.lagIn === 'elapsed') return [link];
  const leads = input.calendars
    .filter(({ id }) => able.has(id))
    .map(({ open }) => longestLead(CompiledCalendar.of(open), -link.lag, input.now, input.horizon));
  return [{ ...link, lag: -Math.max(...leads), lagIn: 'elapsed' }];
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
