import type { Phase, PlanInput } from '../../../shared/schedule/model.js';
import { byId, candidatesOf } from './candidates.js';
import type { DaySheet } from './day-sheet.js';

/** Numbers compared from the first on, less first. */
type Urgency = readonly number[];

/**
 * Phases in the order in which they are dealt with: the given order, where it stood before, the job's priority, its due date, the longest way
 * to the end, the id. Whoever waits for a phase lends it its own urgency.
 *
 * @throws RangeError when links go round in a circle
 */
export function byUrgency(input: PlanInput, sheet: DaySheet): Phase[] {
  const phases = new Map(input.phases.map((phase) => [phase.id, phase]));
  const jobs = new Map(input.jobs.map((job) => [job.id, job]));
  const listed = new Map((input.order ?? []).map((id, place) => [id, place]));
  const openSlots = new Map<string | undefined, number>();
  const after = new Map<string, Phase[]>(input.phases.map(({ id }) => [id, []]));
  for (const { from, to } of input.links) after.get(from)!.push(phases.get(to)!);

  const clockLength = (phase: Phase): number => {
    const { slots, kind } = phase.duration;
    if (kind === 'elapsed') return slots;
    const calendarId = candidatesOf(input, phase)[0]?.calendarId ?? phase.calendarId;
    if (!openSlots.has(calendarId)) openSlots.set(calendarId, sheet.openSlots(calendarId));
    const open = openSlots.get(calendarId)!;
    return open === 0 ? slots : Math.round((slots * input.horizon) / open);
  };
  const tail = followed(after, (phase, tails: number[]) => Math.max(0, ...tails) + clockLength(phase));
  const urgency = followed(after, (phase, others: Urgency[]) => {
    const { priority, due = Infinity } = jobs.get(phase.jobId)!;
    const place = listed.get(phase.id) ?? Infinity;
    const own = [place, phase.previous?.start ?? Infinity, priority, due, -tail(phase)];
    return others.reduce((least, one) => (compare(one, least) < 0 ? one : least), own as Urgency);
  });
  return [...input.phases].sort((a, b) => compare(urgency(a), urgency(b)) || byId(a, b));
}

function compare(a: Urgency, b: Urgency): number {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at < 0 ? 0 : a[at]! < b[at]! ? -1 : 1;
}

/** A value of each phase that is worked out from the values of those that wait for it. */
function followed<T>(
  after: ReadonlyMap<string, readonly Phase[]>,
  work: (phase: Phase, of: T[]) => T,
): (phase: Phase) => T {
  const known = new Map<string, T>();
  const asked = new Set<string>();
  const value = (phase: Phase): T => {
    if (known.has(phase.id)) return known.get(phase.id)!;
    if (asked.has(phase.id)) {
      throw new RangeError(`Slot by slot does not plan circles: phase "${phase.id}" waits for itself.`);
    }
    asked.add(phase.id);
    known.set(phase.id, work(phase, after.get(phase.id)!.map(value)));
    return known.get(phase.id)!;
  };
  return value;
}
