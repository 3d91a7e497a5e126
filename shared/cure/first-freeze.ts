import type { Finding } from '../entry/rules/finding.js';
import { published } from '../entry/source.js';
import { psi, type Psi } from '../units/stress.js';
import type { EpochMs } from '../units/time.js';
import { ageBy } from './age-method.js';
import { measuredHistory } from './measured-history.js';
import { ageMethodOf, mixtureStrength } from './mixture-strength.js';
import { STRENGTH_CAUTION, type ConcreteReading, type CurePlacement } from './placement.js';

/** Strength that concrete must have before it may freeze for the first time. */
export const FIRST_FREEZE: Psi = psi(500);

/** The first-freeze finding, with when it froze first. */
export interface FirstFreezeFinding extends Finding {
  readonly frozenAt: EpochMs | null;
}

/** Concrete may not freeze before it has 500 psi (3.45 MPa); a reading of 32 °F or less is taken as frozen. */
export function firstFreeze(
  placement: CurePlacement,
  readings: readonly ConcreteReading[],
  until: EpochMs,
): FirstFreezeFinding {
  const { points } = measuredHistory(placement, readings, until);
  const frozenAt = points.find((point) => point.temperature <= 0)?.at ?? null;
  const { intervals } = measuredHistory(placement, readings, frozenAt ?? until);
  const age = ageBy(ageMethodOf(placement.mixture), intervals);
  const strength = mixtureStrength(placement.mixture, age);
  const ok = frozenAt === null || strength >= FIRST_FREEZE;
  return {
    rule: 'first-freeze',
    ok,
    frozenAt,
    measured: frozenAt === null ? 'not frozen' : `${Math.floor(strength)} psi at the first freezing`,
    limit: `at least ${FIRST_FREEZE} psi before freezing`,
    source: published('ACI 306.1-90 as restated by Beall 2004'),
    text: ok
      ? 'Not frozen before 500 psi'
      : 'Froze before 500 psi: stop, have an engineer look at it before anything is built on it',
    caution: STRENGTH_CAUTION,
  };
}
