import { quantity } from '../units/quantity.js';
import type { DegreeHours } from './nurse-saul.js';

/** Plowman: percent of the 28-day strength, A + B·log₁₀(M/1000), M in °C·h over −11 °C. From memory (Shetty). */
export const plowmanPercent = (factor: DegreeHours, a: number, b: number): number =>
  factor <= 0 ? 0 : Math.max(0, a + b * Math.log10(factor / 1000));

/** Inverse of Plowman: the factor at which a percentage of the 28-day strength is reached. */
export const plowmanFactor = (percent: number, a: number, b: number): DegreeHours =>
  quantity(1000 * 10 ** ((percent - a) / b), '°C·h');
