import { mergeIntervals } from './intervals.js';
import type { Interval } from './model.js';
import { slotAtOrAfter, slotAtOrBefore } from './slot-instant.js';
import { SLOT_MS, slot, type SlotCount } from './slot.js';
import { instantOfWallClock, wallClockAt } from './zone-time.js';

/** Local hours on one day. `to` at or before `from` ends on the next day; "24:00" is the day's end. */
export interface LocalRange {
  /** "HH:MM" */
  readonly from: string;
  /** "HH:MM" */
  readonly to: string;
}

export type Weekday = 'monday' | 'tuesday' | 'wednesday' | 'thursday' | 'friday' | 'saturday' | 'sunday';

/** Weekly hours in a zone, and the dates that differ. */
export interface WeekCalendar {
  /** IANA zone name. */
  readonly zone: string;
  /** A weekday left out is closed. */
  readonly weekly: Readonly<Partial<Record<Weekday, readonly LocalRange[]>>>;
  /** By "YYYY-MM-DD": hours of that date instead of the weekly ones; an empty list closes it. */
  readonly exceptions: Readonly<Record<string, readonly LocalRange[]>>;
}

const DAY_MS = 86_400_000;
const WEEKDAYS: readonly Weekday[] = [
  'sunday',
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
];

/**
 * Expands weekly hours and exceptions into merged open stretches of slots. Local times become instants here, at the edge, so a clock
 * change can neither lengthen a shift nor shorten a cure. Hours that do not fall on a slot are narrowed, never widened.
 *
 * @param horizonStartMs instant of slot 0, epoch milliseconds
 * @param slots length of the horizon
 * @param pastSlots also covers this many slots before the horizon, for facts that lie there
 * @throws RangeError for an unknown zone, a malformed time or date
 */
export function calendarFromWeek(
  week: WeekCalendar,
  horizonStartMs: number,
  slots: SlotCount,
  pastSlots: SlotCount = 0,
): Interval[] {
  for (const date of Object.keys(week.exceptions)) checkDate(date);
  const first = horizonStartMs - pastSlots * SLOT_MS;
  const last = horizonStartMs + slots * SLOT_MS;
  const open: Interval[] = [];
  const endDay = startOfDay(wallClockAt(last, week.zone));
  for (let day = startOfDay(wallClockAt(first, week.zone)) - DAY_MS; day <= endDay; day += DAY_MS) {
    const date = new Date(day).toISOString().slice(0, 10);
    const weekday = WEEKDAYS[new Date(day).getUTCDay()]!;
    for (const range of week.exceptions[date] ?? week.weekly[weekday] ?? []) {
      const fromMs = day + minutesOf(range.from) * 60_000;
      const toMs = day + minutesOf(range.to) * 60_000;
      const from = slotAtOrAfter(instantOfWallClock(fromMs, week.zone), horizonStartMs);
      const to = slotAtOrBefore(
        instantOfWallClock(toMs > fromMs ? toMs : toMs + DAY_MS, week.zone),
        horizonStartMs,
      );
      open.push({ from: slot(Math.max(from, -pastSlots)), to: slot(Math.min(to, slots)) });
    }
  }
  return mergeIntervals(open);
}

function startOfDay(wallMs: number): number {
  return Math.floor(wallMs / DAY_MS) * DAY_MS;
}

function minutesOf(time: string): number {
  const match = /^(\d{2}):(\d{2})$/.exec(time);
  const minutes = match ? Number(match[1]) * 60 + Number(match[2]) : NaN;
  if (!match || Number(match[2]) > 59 || minutes > 24 * 60) {
    throw new RangeError(`"${time}" is not a time of day: write HH:MM from 00:00 to 24:00.`);
  }
  return minutes;
}

function checkDate(date: string): void {
  const ok = /^\d{4}-\d{2}-\d{2}$/.test(date) && new Date(`${date}T00:00:00Z`).toJSON()?.startsWith(date);
  if (!ok) throw new RangeError(`"${date}" is not a date: write YYYY-MM-DD.`);
}
