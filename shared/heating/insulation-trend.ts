import type { CableReading } from './cable-reading.js';

/** How far insulation may fall before it is a warning though it passes: a decade. */
const DECADE = 10;

/** A warning when the insulation has fallen to a tenth or less of the best it ever showed; else nothing. */
export function insulationTrend(reading: CableReading, earlier: readonly CableReading[]): string | undefined {
  const best = earlier.reduce((most, one) => Math.max(most, one.megaohms), 0);
  if (reading.megaohms <= 0 || best / reading.megaohms < DECADE) return undefined;
  return `Insulation fell from ${best} to ${reading.megaohms} MΩ, a decade or more: look for damage or damp before going on`;
}
