import type { EpochMs } from '../units/time.js';
import { ageBy } from './age-method.js';
import { measuredHistory } from './measured-history.js';
import { ageMethodOf, methodWords, mixtureStrength } from './mixture-strength.js';
import { STRENGTH_CAUTION, type ConcreteReading, type CurePlacement } from './placement.js';
import type { MeasuredStrength } from './strength-estimate.js';

/** Strength as far as readings show it at `until`: nothing is assumed between far readings nor after the last one. */
export function measuredStrength(
  placement: CurePlacement,
  readings: readonly ConcreteReading[],
  until: EpochMs,
): MeasuredStrength {
  const { points, intervals, gaps } = measuredHistory(placement, readings, until);
  const method = ageMethodOf(placement.mixture);
  const age = ageBy(method, intervals);
  const strength = mixtureStrength(placement.mixture, age);
  return {
    basis: 'measured',
    strength,
    equivalentAge: age,
    asOf: points.at(-1)?.at ?? placement.placedAt,
    reached: strength >= placement.required - 1e-6,
    gaps,
    required: placement.required,
    method: methodWords(placement.mixture),
    source: method.source,
    caution: STRENGTH_CAUTION,
  };
}
