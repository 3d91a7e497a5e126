import { Temporal } from 'temporal-polyfill';

/** One calendar day in a zone; a day of a clock change is an hour shorter or longer. */
export interface Day {
  /** ISO date, the day's name in the address. */
  readonly date: string;
  /** First moment, in milliseconds since 1970. */
  readonly start: number;
  /** First moment of the day after. */
  readonly end: number;
  /** 1 for Monday to 7 for Sunday. */
  readonly weekday: number;
}

/** The days from a date on, as many as asked for. */
export function daysFrom(date: string, count: number, zone: string): Day[] {
  const first = Temporal.PlainDate.from(date);
  return Array.from({ length: count }, (_, index) => dayOf(first.add({ days: index }), zone));
}

/** The date of a moment in a zone. */
export function dateAt(moment: number, zone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO(zone).toPlainDate().toString();
}

/** The Monday of the week that a date is in. */
export function mondayOf(date: string): string {
  const day = Temporal.PlainDate.from(date);
  return day.subtract({ days: day.dayOfWeek - 1 }).toString();
}

/** A date some days later, or earlier. */
export function addDays(date: string, days: number): string {
  return Temporal.PlainDate.from(date).add({ days }).toString();
}

/** How many days one date lies after another; negative when it lies before. */
export function daysBetween(from: string, to: string): number {
  return Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to)).days;
}

/** The moment of a time of day on a date. */
export function momentAt(date: string, hour: number, zone: string): number {
  return Temporal.PlainDate.from(date).toZonedDateTime({ timeZone: zone, plainTime: { hour } })
    .epochMilliseconds;
}

/** Whether a text is a date such as 2031-01-06. */
export function isDate(text: string | null): text is string {
  if (!text || !/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  try {
    Temporal.PlainDate.from(text, { overflow: 'reject' });
    return true;
  } catch {
    return false;
  }
}

function dayOf(day: Temporal.PlainDate, zone: string): Day {
  return {
    date: day.toString(),
    start: day.toZonedDateTime(zone).epochMilliseconds,
    end: day.add({ days: 1 }).toZonedDateTime(zone).epochMilliseconds,
    weekday: day.dayOfWeek,
  };
}
