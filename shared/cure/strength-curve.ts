import { megapascals, type Megapascals } from '../units/stress.js';
import { hours, type Hours } from '../units/time.js';

/** Exponential strength curve of a mixture: S = Sᵤ·exp[−(τ/t)ᵃ], t in hours of equivalent age. */
export interface StrengthCurve {
  readonly ultimate: Megapascals;
  readonly tau: Hours;
  readonly exponent: number;
}

/** Strength at an equivalent age; none at no age. */
export function strengthAt({ ultimate, tau, exponent }: StrengthCurve, age: Hours): Megapascals {
  return megapascals(age <= 0 ? 0 : ultimate * Math.exp(-((tau / age) ** exponent)));
}

/** Equivalent age at which a strength is reached; null when the mixture never reaches it. */
export function ageOfStrength(
  { ultimate, tau, exponent }: StrengthCurve,
  required: Megapascals,
): Hours | null {
  if (required <= 0) return hours(0);
  if (required >= ultimate) return null;
  return hours(tau / Math.log(ultimate / required) ** (1 / exponent));
}
