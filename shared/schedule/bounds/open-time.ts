import type { CompiledCalendar } from '../compiled-calendar.js';
import type { SlotCount } from '../slot.js';

/** The least time of the clock in which so many open slots pass, whenever it begins; Infinity when there are not so many. */
export function leastClock(hours: CompiledCalendar, slots: SlotCount): SlotCount {
  let least = Infinity;
  if (slots <= 0) return 0;
  for (const { from, to } of hours.open) {
    const end = hours.add(from, slots);
    const start = hours.subtract(to, slots);
    if (end !== null) least = Math.min(least, end - from);
    if (start !== null) least = Math.min(least, to - start);
  }
  return least;
}

/**
 * The most time of the clock that a lead of so many open slots goes back, from any instant up to `until`; before the first of them are open it
 * goes back as far as `since`.
 */
export function longestLead(
  hours: CompiledCalendar,
  slots: SlotCount,
  since: number,
  until: number,
): SlotCount {
  // Closed time makes a lead longer the longer it lasts: it is longest where a stretch begins, at the end, or where it first has its slots.
  const first = hours.reach(slots) ?? until;
  const instants = [...hours.open.map(({ from }) => from), first, until].filter((at) => at <= until);
  return instants.reduce<SlotCount>((most, at) => {
    const left = hours.worked(at) - slots;
    return Math.max(most, at - (left <= 0 ? since : hours.reach(left)!));
  }, slots);
}
