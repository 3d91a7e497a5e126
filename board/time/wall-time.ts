import { Temporal } from 'temporal-polyfill';

/** "2031-01-06T08:00": a moment on the wall clock of a zone, as a field for date and time holds it. */
export function wallTime(moment: number, zone: string): string {
  const here = Temporal.Instant.fromEpochMilliseconds(moment).toZonedDateTimeISO(zone);
  return here.toPlainDateTime().toString({ smallestUnit: 'minute' });
}

/**
 * The moment of a wall-clock time in a zone; null for a text that is none. An hour that a clock change skips is taken as the one after it, and of
 * one that comes twice the first.
 */
export function momentOfWall(text: string, zone: string): number | null {
  try {
    return Temporal.PlainDateTime.from(text).toZonedDateTime(zone).epochMilliseconds;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
