import { canDo } from '../can-do.js';
import { CompiledCalendar } from '../compiled-calendar.js';
import type { Phase, PlanInput } from '../model.js';
import { slot, type Slot, type SlotCount } from '../slot.js';
import { greatest, inTurn } from './in-turn.js';

/**
 * Finishes that crews cannot beat, whatever the order: work against open hours (the energy relaxation of Baptiste, Le Pape and Nuijten 1999,
 * applied from now on). For every set of crews the work that only they can do must fit into their open time.
 * Only work of unstarted phases without a pin counts, as facts may double a crew and pins may run through closed hours.
 *
 * @param jobIds jobs that finish
 * @param counts whether the work of a phase counts
 * @returns for k = 1, 2 … the earliest slot at which k of the jobs can be finished
 */
export function crewEnergy(
  input: PlanInput,
  jobIds: readonly string[],
  counts: (phase: Phase) => boolean = () => true,
): Slot[] {
  const calendars = new Map(input.calendars.map(({ id, open }) => [id, CompiledCalendar.of(open)]));
  const work = input.phases.filter((phase) => isWork(phase) && counts(phase));
  const candidates = new Map(work.map((phase) => [phase, input.crews.filter((crew) => canDo(crew, phase))]));
  const sets = new Map(
    [...candidates.values()].map((crews) => [JSON.stringify(crews.map(({ id }) => id)), crews]),
  );
  let earliest = jobIds.map(() => input.now);
  for (const crews of sets.values()) {
    if (crews.length === 0) continue;
    const hours = crews.map(({ calendarId }) => calendars.get(calendarId)!);
    const needs = new Map<string, SlotCount>(jobIds.map((id) => [id, 0]));
    for (const [{ jobId, duration }, able] of candidates) {
      const theirs = able.length > 0 && able.every((crew) => crews.includes(crew));
      const before = needs.get(jobId);
      if (theirs && before !== undefined) needs.set(jobId, before + duration.slots);
    }
    earliest = greatest(
      earliest,
      inTurn(needs.values(), (total) => whenWorked(hours, total, input)),
    );
  }
  return earliest;
}

function isWork({ duration, facts, trade, crewId }: Phase): boolean {
  if (duration.kind !== 'work' || (trade === undefined && crewId === undefined)) return false;
  return facts?.actualStart === undefined && facts?.pinnedStart === undefined;
}

/** The earliest slot by which the crews together have been open so long since now; the horizon's end where they never are. */
function whenWorked(hours: readonly CompiledCalendar[], total: SlotCount, { now, horizon }: PlanInput): Slot {
  const open = (t: number): SlotCount =>
    hours.reduce((sum, one) => sum + one.worked(slot(t)) - one.worked(now), 0);
  let low: number = now;
  let high = Math.max(now, horizon);
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (open(middle) >= total) high = middle;
    else low = middle + 1;
  }
  return slot(low);
}
