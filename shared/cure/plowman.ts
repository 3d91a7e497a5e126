import type { DegreeHours } from './nurse-saul.js';

/** Plowman: percent of the 28-day strength, A + B·log₁₀(M/1000), M in °C·h over −11 °C. From memory (Shetty). */
export const plowmanPercent = (factor: DegreeHours, a: number, b: number): number =>
  a + b * Math.log10(factor / 1000);
