import { fromMemory, type Source } from '../../entry/source.js';
import type { Hours } from '../../units/time.js';

/** Three-parameter degree of hydration: α = α∞·exp[−(τ/tₑ)^β]. */
export interface Hydration {
  /** Degree of hydration it tends to, 0 to 1. */
  readonly ultimate: number;
  /** Characteristic time, h of equivalent age. */
  readonly tauHours: number;
  readonly exponent: number;
}

/** Where the form comes from. */
export const HYDRATION_SOURCE: Source = fromMemory(
  'three-parameter form of Freiesleben Hansen and Pedersen, as used by Schindler and Folliard 2005',
);

/** Degree of hydration at an equivalent age; none at no age. */
export const degreeOfHydration = (
  { ultimate, tauHours, exponent }: Hydration,
  age: Hours | number,
): number => (age <= 0 ? 0 : ultimate * Math.exp(-((tauHours / age) ** exponent)));
