import { Temporal } from 'temporal-polyfill';

/**
 * The instant at a full hour of the day of another instant in a zone, some days later or earlier. Times of reminders lie
 * on full hours of a day, so a plan that shifts by minutes does not move them.
 */
export function atHour(zone: string, of: Date, hour: number, plusDays = 0): Date {
  const day = Temporal.Instant.fromEpochMilliseconds(of.getTime()).toZonedDateTimeISO(zone).toPlainDate();
  const at = day.add({ days: plusDays }).toZonedDateTime({ timeZone: zone, plainTime: { hour } });
  return new Date(at.epochMilliseconds);
}

/** An instant some hours later, by the clock. */
export function plusHours(of: Date, hours: number): Date {
  return new Date(of.getTime() + hours * 3_600_000);
}

/** The instant itself when it lies in the working day (6 to 18 in the zone), else the next morning at 7. */
export function inWorkingDay(zone: string, at: Date): Date {
  const { hour } = Temporal.Instant.fromEpochMilliseconds(at.getTime()).toZonedDateTimeISO(zone);
  if (hour < 6) return atHour(zone, at, 7);
  return hour >= 18 ? atHour(zone, at, 7, 1) : at;
}
