import { toMegapascals } from '../units/stress.js';
import { toCelsius, type Fahrenheit } from '../units/temperature.js';
import { addHours, type EpochMs } from '../units/time.js';
import { CAUTIOUS_METHOD, CAUTIOUS_SOURCE, hoursUntil } from './cautious-age.js';
import { measuredHistory } from './measured-history.js';
import { curveOf } from './mixture.js';
import { STRENGTH_CAUTION, type ConcreteReading, type CurePlacement } from './placement.js';
import { ageOfStrength } from './strength-curve.js';
import type { PredictedRelease } from './strength-estimate.js';

/**
 * When the required strength is expected if the concrete stays at `assumed` from the last reading on. A date for the
 * plan only: a hold point is released on measured strength or by a named person.
 */
export function predictedRelease(
  placement: CurePlacement,
  readings: readonly ConcreteReading[],
  now: EpochMs,
  assumed: Fahrenheit,
): PredictedRelease {
  const { points, intervals } = measuredHistory(placement, readings, now);
  const last = points.at(-1)?.at ?? placement.placedAt;
  const age = ageOfStrength(curveOf(placement.mixture), toMegapascals(placement.required));
  const missing = age === null ? null : hoursUntil(intervals, age, toCelsius(assumed));
  return {
    basis: 'predicted',
    releaseAt: missing === null ? null : addHours(last, missing),
    assumption: `concrete at ${assumed} °F from the last reading on`,
    required: placement.required,
    method: `${CAUTIOUS_METHOD}; curve of ${placement.mixture.name}`,
    source: CAUTIOUS_SOURCE,
    caution: STRENGTH_CAUTION,
  };
}
