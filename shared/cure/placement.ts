import type { Fahrenheit } from '../units/temperature.js';
import type { Psi } from '../units/stress.js';
import type { EpochMs } from '../units/time.js';
import type { Mixture } from './mixture.js';

/** Concrete or mortar placed at one time. */
export interface CurePlacement {
  readonly placedAt: EpochMs;
  /** Temperature as placed. */
  readonly placedTemperature: Fahrenheit;
  readonly mixture: Mixture;
  readonly required: Psi;
}

/** A temperature measured in the concrete. */
export interface ConcreteReading {
  readonly at: EpochMs;
  readonly concrete: Fahrenheit;
}

/** Said wherever a strength is shown. */
export const STRENGTH_CAUTION =
  'A strength figure is an estimate from temperature; loads that can hurt someone wait for the engineer or the authority.';
