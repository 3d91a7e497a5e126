const formatters = new Map<string, Intl.DateTimeFormat>();

/** One formatter a zone: making one costs far more than using it. */
function formatterOf(zone: string): Intl.DateTimeFormat {
  let formatter = formatters.get(zone);
  if (!formatter) {
    try {
      formatter = new Intl.DateTimeFormat('en-US-u-ca-iso8601-nu-latn', {
        timeZone: zone,
        hourCycle: 'h23',
        year: 'numeric',
        month: 'numeric',
        day: 'numeric',
        hour: 'numeric',
        minute: 'numeric',
        second: 'numeric',
      });
    } catch {
      throw new RangeError(`Time zone "${zone}" is not known: give an IANA name such as America/New_York.`);
    }
    formatters.set(zone, formatter);
  }
  return formatter;
}

/** What a wall clock in the zone shows at an instant, as if that reading were UTC, in epoch milliseconds. */
export function wallClockAt(epochMs: number, zone: string): number {
  const whole = Math.floor(epochMs / 1000) * 1000;
  const read = { year: 0, month: 0, day: 0, hour: 0, minute: 0, second: 0 };
  for (const { type, value } of formatterOf(zone).formatToParts(whole)) {
    if (type in read) read[type as keyof typeof read] = Number(value);
  }
  const { year, month, day, hour, minute, second } = read;
  return Date.UTC(year, month - 1, day, hour, minute, second) + (epochMs - whole);
}

/**
 * The instant at which a wall clock in the zone shows a reading (given as if it were UTC). A reading that occurs twice means
 * the first; one that a clock change skips is read with the offset from before the change, as RFC 5545 says for such times.
 */
export function instantOfWallClock(wallMs: number, zone: string): number {
  const day = 86_400_000;
  const offsetBefore = wallClockAt(wallMs - day, zone) - (wallMs - day);
  const offsetAfter = wallClockAt(wallMs + day, zone) - (wallMs + day);
  const first = wallMs - offsetBefore;
  if (offsetBefore === offsetAfter || wallClockAt(first, zone) === wallMs) return first;
  const second = wallMs - offsetAfter;
  return wallClockAt(second, zone) === wallMs ? second : first;
}
