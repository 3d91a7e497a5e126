import type { Prisma } from '../generated/prisma/client.js';
import type { DayHours, HourRange } from './week.model.js';
import { type StoredHours, type StoredWeek, WEEKDAYS } from './week-schema.js';

/** Stored hours of a day as callers see them. */
export function hourRanges(stored: Prisma.JsonValue): HourRange[] {
  return (stored as StoredHours).map(([from, to]) => ({ from, to }));
}

/** A stored week as callers see it: all seven days, Monday first. */
export function weekRows(stored: Prisma.JsonValue): DayHours[] {
  const week = stored as StoredWeek;
  return WEEKDAYS.map((day) => ({ day, hours: hourRanges(week[day] ?? []) }));
}
