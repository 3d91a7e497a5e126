import { HOUR_MS } from '../../../shared/units/time.js';

const MINUTE_MS = 60_000;
const FIRST_PAUSE_MS = 5 * MINUTE_MS;
const LONGEST_PAUSE_MS = HOUR_MS;

/**
 * When a forecast is fetched again after a good answer: after the interval and up to a tenth of it more, by chance, so
 * that the sites do not all ask at once.
 *
 * @param chance a number from 0 to 1.
 */
export function afterAnswer(now: Date, minutes: number, chance: number): Date {
  return new Date(now.getTime() + Math.round(minutes * MINUTE_MS * (1 + chance / 10)));
}

/**
 * When it is tried again after a failure: after five minutes, ten, twenty, up to an hour, of which at least half is
 * waited and the rest is up to chance; never before the server wants to be asked again.
 *
 * @param failures in a row, this one included.
 * @param wait milliseconds that the server asks to wait; null when it did not say.
 * @param chance a number from 0 to 1.
 */
export function afterFailure(now: Date, failures: number, wait: number | null, chance: number): Date {
  const pause = Math.min(FIRST_PAUSE_MS * 2 ** Math.max(0, failures - 1), LONGEST_PAUSE_MS);
  const own = Math.round((pause * (1 + chance)) / 2);
  return new Date(now.getTime() + Math.max(own, wait ?? 0));
}
