import { WEEKDAYS } from '../../platform/weekdays.js';
import {
  calendarFromWeek,
  type LocalRange,
  type WeekCalendar,
  type Weekday,
} from '../../../shared/schedule/calendar-from-week.js';
import type { Calendar, Crew, Interval } from '../../../shared/schedule/model.js';
import type { Prisma } from '../../generated/prisma/client.js';
import type { PlanningRows } from './rows.js';
import type { TimeFrame } from './time-frame.js';

/** Slots before the horizon that facts may lie in. */
const PAST_SLOTS = 60 * 96;

/** Expanded calendars that are kept for the next plan: hours rarely change, and a horizon starts anew once a day. */
const MOST_KEPT = 200;

type StoredRanges = readonly (readonly [string, string])[];

const kept = new Map<string, readonly Interval[]>();

/** Open hours of every crew and every authority. */
export function gatherCalendars(rows: PlanningRows, frame: TimeFrame): Calendar[] {
  const crews = rows.crews.map((crew) => ({
    id: crewCalendarId(crew.id),
    open: expand(weekOf(crew.zone, crew.week, exceptionsOf(crew.exceptions)), frame),
  }));
  const authorities = rows.authorities.map((authority) => ({
    id: authorityCalendarId(authority.id),
    open: expand(weekOf(authority.zone, authority.week, closedDaysOf(authority.closedDays)), frame),
  }));
  return [...crews, ...authorities];
}

/** The crews; one out of use keeps its past but may do nothing new. */
export function gatherCrews(rows: PlanningRows): Crew[] {
  return rows.crews.map(({ id, trades, active }) => ({
    id,
    trades: active ? trades : [],
    calendarId: crewCalendarId(id),
  }));
}

export const crewCalendarId = (crewId: string): string => `crew ${crewId}`;
export const authorityCalendarId = (authorityId: string): string => `authority ${authorityId}`;

function weekOf(
  zone: string,
  week: Prisma.JsonValue,
  exceptions: Record<string, readonly LocalRange[]>,
): WeekCalendar {
  const weekly: Partial<Record<Weekday, readonly LocalRange[]>> = {};
  for (const [day, ranges] of Object.entries((week ?? {}) as unknown as Record<string, StoredRanges>)) {
    const weekday = WEEKDAYS[day];
    if (weekday) weekly[weekday] = rangesOf(ranges);
  }
  return { zone, weekly, exceptions };
}

function exceptionsOf(rows: readonly { day: Date; hours: Prisma.JsonValue }[]) {
  const days = rows.map(
    ({ day, hours }) => [day.toISOString().slice(0, 10), rangesOf(hours as unknown as StoredRanges)] as const,
  );
  return Object.fromEntries(days.sort(([a], [b]) => (a < b ? -1 : 1)));
}

function closedDaysOf(stored: Prisma.JsonValue) {
  const days = Object.entries((stored ?? {}) as unknown as Record<string, StoredRanges>);
  return Object.fromEntries(days.map(([day, ranges]) => [day, rangesOf(ranges)]));
}

function rangesOf(stored: StoredRanges): LocalRange[] {
  return stored.map(([from, to]) => ({ from, to }));
}

function expand(week: WeekCalendar, frame: TimeFrame): readonly Interval[] {
  const key = JSON.stringify([week, frame.startMs, frame.slots]);
  const known = kept.get(key);
  if (known) return known;
  const open = calendarFromWeek(week, frame.startMs, frame.slots, PAST_SLOTS);
  const oldest = kept.keys().next();
  if (kept.size >= MOST_KEPT && !oldest.done) kept.delete(oldest.value);
  kept.set(key, open);
  return open;
}
