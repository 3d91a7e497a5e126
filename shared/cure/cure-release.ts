import type { MeasuredStrength, PredictedRelease } from './strength-estimate.js';

/** Leave given by a named person in place of a measurement. */
export interface ReleaseDecision {
  readonly by: string;
  readonly reason: string;
}

/** Whether a cure hold point may be released, and on what. */
export type CureRelease =
  | { readonly ok: true; readonly on: 'measured' | 'decision'; readonly text: string }
  | { readonly ok: false; readonly text: string };

/**
 * A cure hold point is released on measured strength, or on the authority of a named person with a reason. A
 * prediction alone never releases it, whatever it says.
 */
export function cureRelease(
  estimate: MeasuredStrength | PredictedRelease,
  decision: ReleaseDecision | null = null,
): CureRelease {
  if (estimate.basis === 'measured' && estimate.reached) {
    const reached = `${Math.floor(estimate.strength)} psi measured of ${estimate.required} psi`;
    return { ok: true, on: 'measured', text: reached };
  }
  if (decision && decision.by.trim() !== '' && decision.reason.trim() !== '') {
    return { ok: true, on: 'decision', text: `Released by ${decision.by}: ${decision.reason}` };
  }
  if (estimate.basis === 'predicted') {
    return {
      ok: false,
      text: 'A prediction never releases: take temperature readings, or have a named person decide with a reason',
    };
  }
  const short = `${Math.floor(estimate.strength)} psi of ${estimate.required} psi so far`;
  return { ok: false, text: `Not strong enough: ${short}; keep it warm and take readings` };
}
