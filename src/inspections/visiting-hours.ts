import { WEEKDAYS } from '../platform/weekdays.js';
import { calendarFromWeek, type LocalRange } from '../../shared/schedule/calendar-from-week.js';
import { CompiledCalendar } from '../../shared/schedule/compiled-calendar.js';
import { instantOfSlot, slotAtOrAfter, slotAtOrBefore } from '../../shared/schedule/slot-instant.js';
import { SLOT_MINUTES, SLOT_MS } from '../../shared/schedule/slot.js';
import type { Authority } from '../generated/prisma/client.js';

const DAY_MS = 24 * 60 * 60 * 1000;
/** How far ahead the next visit is looked for. */
const HORIZON_DAYS = 62;

type Ranges = readonly (readonly [string, string])[];

/** When an authority visits: its weekly hours and closed days in its own zone. */
export class VisitingHours {
  private readonly start: number;
  private readonly open: CompiledCalendar;

  /** @param from earliest instant that will be asked about */
  constructor(
    private readonly authority: Authority,
    from: Date,
  ) {
    this.start = Math.floor(from.getTime() / SLOT_MS) * SLOT_MS - DAY_MS;
    const weekly = Object.entries((authority.week ?? {}) as unknown as Record<string, Ranges>);
    const exceptions = Object.entries((authority.closedDays ?? {}) as unknown as Record<string, Ranges>);
    const calendar = calendarFromWeek(
      {
        zone: authority.zone,
        weekly: Object.fromEntries(weekly.map(([day, hours]) => [WEEKDAYS[day] ?? day, hours.map(rangeOf)])),
        exceptions: Object.fromEntries(exceptions.map(([day, hours]) => [day, hours.map(rangeOf)])),
      },
      this.start,
      (HORIZON_DAYS * DAY_MS) / SLOT_MS,
    );
    this.open = CompiledCalendar.of(calendar);
  }

  /** Begin of the first time at or after an instant that is long enough for a visit; null when none is in sight. */
  nextVisit(after: Date): Date | null {
    const slots = Math.ceil(this.authority.visitMinutes / SLOT_MINUTES);
    const found = this.open.gap(slotAtOrAfter(after.getTime(), this.start), slots);
    return found === null ? null : new Date(instantOfSlot(found, this.start));
  }

  /** Whether the authority visits during the whole of a window. */
  contains(from: Date, to: Date): boolean {
    const first = slotAtOrBefore(from.getTime(), this.start);
    const last = slotAtOrAfter(to.getTime(), this.start);
    return this.open.worked(last) - this.open.worked(first) === last - first;
  }

  /** Earliest visit that keeps the notice counted from the request and the visiting hours. */
  earliestVisit(requestedAt: Date): Date | null {
    return this.nextVisit(noticeOver(this.authority, requestedAt));
  }
}

/** When the notice that the authority asks for is over, counted from the request. */
export function noticeOver(authority: Authority, requestedAt: Date): Date {
  return new Date(requestedAt.getTime() + authority.noticeHours * 60 * 60 * 1000);
}

const rangeOf = ([from, to]: readonly [string, string]): LocalRange => ({ from, to });
