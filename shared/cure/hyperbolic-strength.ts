import { megapascals, type Megapascals } from '../units/stress.js';
import { hours, type Hours } from '../units/time.js';

/** Hyperbolic strength curve: S = Sᵤ·k(t − t₀)/(1 + k(t − t₀)), t in hours of equivalent age. */
export interface HyperbolicCurve {
  readonly ultimate: Megapascals;
  /** 1/h. */
  readonly k: number;
  /** Age at which strength begins, h. */
  readonly start: Hours;
}

/** Strength at an equivalent age; none before it begins. */
export function hyperbolicStrength({ ultimate, k, start }: HyperbolicCurve, age: Hours): Megapascals {
  const grown = k * Math.max(0, age - start);
  return megapascals((ultimate * grown) / (1 + grown));
}

/** Equivalent age at which a strength is reached; null when it never is. */
export function ageOfHyperbolicStrength(curve: HyperbolicCurve, required: Megapascals): Hours | null {
  const { ultimate, k, start } = curve;
  if (required <= 0) return hours(0);
  if (required >= ultimate) return null;
  return hours(start + required / (k * (ultimate - required)));
}
