import { Temporal } from 'temporal-polyfill';

/** A stretch of every night in which a person is not to be written to, "HH:MM" in the person's zone. */
export interface QuietHours {
  readonly zone: string;
  readonly quietFrom: string | null;
  readonly quietTo: string | null;
}

/**
 * The end of the quiet stretch that holds the instant, or null when the instant lies in none. A stretch may go over
 * midnight; on days of a clock change it ends at the hour the clock on the wall shows.
 */
export function quietUntil({ zone, quietFrom, quietTo }: QuietHours, instant: Date): Date | null {
  if (quietFrom === null || quietTo === null || quietFrom === quietTo) return null;
  const from = Temporal.PlainTime.from(quietFrom);
  const to = Temporal.PlainTime.from(quietTo);
  const local = Temporal.Instant.fromEpochMilliseconds(instant.getTime()).toZonedDateTimeISO(zone);
  const time = local.toPlainTime();
  const overMidnight = Temporal.PlainTime.compare(from, to) > 0;
  const afterFrom = Temporal.PlainTime.compare(time, from) >= 0;
  const beforeTo = Temporal.PlainTime.compare(time, to) < 0;
  const quiet = overMidnight ? afterFrom || beforeTo : afterFrom && beforeTo;
  if (!quiet) return null;
  const day = overMidnight && afterFrom ? local.toPlainDate().add({ days: 1 }) : local.toPlainDate();
  return new Date(day.toZonedDateTime({ timeZone: zone, plainTime: to }).epochMilliseconds);
}
