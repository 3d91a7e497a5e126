import type { Calendar, Crew, Interval, Job, Link, Phase, PlanInput, Pool, WeatherSet } from './model.js';
import { subtractIntervals, mergeIntervals } from './intervals.js';
import { slot, type Slot, type SlotCount } from './slot.js';

/** One change of the planning input: what a drag, a what-if and a new event are made of. Kinds with a whole record replace or add it by id. */
export type Change =
  | { readonly kind: 'phase'; readonly phase: Phase }
  /** The work of a phase takes so many slots longer; with a negative number shorter. */
  | { readonly kind: 'delay'; readonly phaseId: string; readonly slots: SlotCount }
  | { readonly kind: 'weather'; readonly set: WeatherSet }
  | { readonly kind: 'crew'; readonly crew: Crew }
  | { readonly kind: 'withoutCrew'; readonly crewId: string }
  | { readonly kind: 'calendar'; readonly calendar: Calendar }
  /** A lost stretch: closed in one calendar, or in all of them. */
  | {
      readonly kind: 'closed';
      readonly calendarId?: string | undefined;
      readonly from: Slot;
      readonly to: Slot;
    }
  | { readonly kind: 'pool'; readonly pool: Pool }
  | { readonly kind: 'job'; readonly job: Job }
  | { readonly kind: 'link'; readonly link: Link }
  | { readonly kind: 'withoutLink'; readonly linkId: string };

/**
 * The input after some changes, in order; the given one stays as it is.
 * @throws RangeError naming an id that is not in the input, where a change needs one that is
 */
export function applyChanges(input: PlanInput, changes: readonly Change[]): PlanInput {
  return changes.reduce(applyOne, input);
}

function applyOne(input: PlanInput, change: Change): PlanInput {
  switch (change.kind) {
    case 'phase':
      return { ...input, phases: put(input.phases, change.phase) };
    case 'delay': {
      const phase = find(input.phases, change.phaseId, 'phase');
      return { ...input, phases: put(input.phases, longer(phase, change.slots)) };
    }
    case 'weather':
      return { ...input, weather: put(input.weather, change.set) };
    case 'crew':
      return { ...input, crews: put(input.crews, change.crew) };
    case 'withoutCrew':
      return withoutCrew(input, find(input.crews, change.crewId, 'crew'));
    case 'calendar':
      return { ...input, calendars: put(input.calendars, change.calendar) };
    case 'closed':
      return { ...input, calendars: close(input.calendars, change.calendarId, change) };
    case 'pool':
      return { ...input, pools: put(input.pools, change.pool) };
    case 'job':
      return { ...input, jobs: put(input.jobs, change.job) };
    case 'link':
      return { ...input, links: put(input.links, change.link) };
    case 'withoutLink': {
      const { id } = find(input.links, change.linkId, 'link');
      return { ...input, links: input.links.filter((link) => link.id !== id) };
    }
  }
}

function find<T extends { readonly id: string }>(list: readonly T[], id: string, what: string): T {
  const found = list.find((one) => one.id === id);
  if (!found) throw new RangeError(`There is no ${what} "${id}" to change: name one of the input.`);
  return found;
}

function put<T extends { readonly id: string }>(list: readonly T[], one: T): T[] {
  const copy = [...list];
  const at = list.findIndex(({ id }) => id === one.id);
  if (at < 0) copy.push(one);
  else copy[at] = one;
  return copy;
}

/** Work that has begun has more left of it; what is finished cannot take longer. */
function longer(phase: Phase, slots: SlotCount): Phase {
  const { duration, facts } = phase;
  if (facts?.actualFinish !== undefined) return phase;
  const more = (count: SlotCount): SlotCount => Math.max(0, count + slots);
  return {
    ...phase,
    duration: { ...duration, slots: more(duration.slots) },
    ...(facts?.remaining === undefined ? {} : { facts: { ...facts, remaining: more(facts.remaining) } }),
  };
}

/** Phases bound to the crew go to its trade; what it has done it has done. */
function withoutCrew(input: PlanInput, crew: Crew): PlanInput {
  const phases = input.phases.map((phase): Phase => {
    const { crewId: bound, facts, trade = crew.trades[0] ?? crew.id, ...rest } = phase;
    const freed = facts?.crewId === crew.id ? { ...facts, crewId: undefined } : facts;
    if (bound === crew.id) return { ...rest, trade, facts: freed };
    return freed === facts ? phase : { ...phase, facts: freed };
  });
  return { ...input, phases, crews: input.crews.filter(({ id }) => id !== crew.id) };
}

function close(calendars: readonly Calendar[], id: string | undefined, lost: Interval): Calendar[] {
  if (id !== undefined) find(calendars, id, 'calendar');
  const holes = mergeIntervals([{ from: slot(lost.from), to: slot(lost.to) }]);
  return calendars.map((calendar) =>
    id === undefined || calendar.id === id
      ? { ...calendar, open: subtractIntervals(mergeIntervals(calendar.open), holes) }
      : calendar,
  );
}
