import { HOUR_MS, type EpochMs } from '../units/time.js';
import type { ForecastHour } from './forecast.js';

/** Most hours that a limit may look back on: four days, as for a cold period of more than three. */
export const MOST_BACK_HOURS = 96;

/** Hours that are kept before a forecast's first: those looked back on, and the day whose mean ends with the first of them. */
const KEPT_HOURS = MOST_BACK_HOURS + 24;

/**
 * The hours before a forecast's first one, out of what was known before it arrived, so that limits with a memory do not
 * forget with every new forecast. Hours that begin at other minutes than the forecast's are left out.
 *
 * @param known hours of the forecast before, with those before its own first
 */
export function earlierHours(known: readonly ForecastHour[], first: EpochMs): readonly ForecastHour[] {
  return known.filter(
    ({ at }) => at < first && at >= first - KEPT_HOURS * HOUR_MS && (first - at) % HOUR_MS === 0,
  );
}
