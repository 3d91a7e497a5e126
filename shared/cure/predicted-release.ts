import { toCelsius, type Fahrenheit } from '../units/temperature.js';
import { addHours, type EpochMs } from '../units/time.js';
import { hoursUntil } from './age-method.js';
import { measuredHistory } from './measured-history.js';
import { ageMethodOf, ageOfMixtureStrength, methodWords } from './mixture-strength.js';
import { STRENGTH_CAUTION, type ConcreteReading, type CurePlacement } from './placement.js';
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
  const method = ageMethodOf(placement.mixture);
  const age = ageOfMixtureStrength(placement.mixture, placement.required);
  const missing = age === null ? null : hoursUntil(method, intervals, age, toCelsius(assumed));
  return {
    basis: 'predicted',
    releaseAt: missing === null ? null : addHours(last, missing),
    assumption: `concrete at ${assumed} °F from the last reading on`,
    required: placement.required,
    method: methodWords(placement.mixture),
    source: method.source,
    caution: STRENGTH_CAUTION,
  };
}
