import { toPsi } from '../units/stress.js';
import type { EpochMs } from '../units/time.js';
import { CAUTIOUS_METHOD, CAUTIOUS_SOURCE, cautiousAge } from './cautious-age.js';
import { measuredHistory } from './measured-history.js';
import { curveOf } from './mixture.js';
import { STRENGTH_CAUTION, type ConcreteReading, type CurePlacement } from './placement.js';
import { strengthAt } from './strength-curve.js';
import type { MeasuredStrength } from './strength-estimate.js';

/** Strength as far as readings show it at `until`: nothing is assumed between far readings nor after the last one. */
export function measuredStrength(
  placement: CurePlacement,
  readings: readonly ConcreteReading[],
  until: EpochMs,
): MeasuredStrength {
  const { points, intervals, gaps } = measuredHistory(placement, readings, until);
  const age = cautiousAge(intervals);
  const strength = toPsi(strengthAt(curveOf(placement.mixture), age));
  return {
    basis: 'measured',
    strength,
    equivalentAge: age,
    asOf: points.at(-1)?.at ?? placement.placedAt,
    reached: strength >= placement.required - 1e-6,
    gaps,
    required: placement.required,
    method: `${CAUTIOUS_METHOD}; curve of ${placement.mixture.name}`,
    source: CAUTIOUS_SOURCE,
    caution: STRENGTH_CAUTION,
  };
}
