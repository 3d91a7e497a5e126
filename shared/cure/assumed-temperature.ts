import { COMMON_PRACTICE, published, type Source } from '../entry/source.js';
import { fahrenheit, type Fahrenheit } from '../units/temperature.js';

/** A temperature assumed for concrete that nobody has measured yet, and why. */
export interface AssumedTemperature {
  readonly temperature: Fahrenheit;
  readonly source: Source;
}

/**
 * Temperature that concrete is assumed to keep under its protection: 55 °F in a heated enclosure, which is what it
 * must be kept at; 50 °F under blankets; the air's when nothing covers it.
 */
export function assumedTemperature(protection: readonly string[], air: Fahrenheit): AssumedTemperature {
  if (protection.includes('enclosure')) {
    const source = published('ACI 306.1-90 as restated by Beall 2004: kept at 55 °F');
    return { temperature: fahrenheit(Math.max(55, air)), source };
  }
  if (protection.includes('blanket')) {
    return { temperature: fahrenheit(Math.max(50, air)), source: COMMON_PRACTICE };
  }
  return { temperature: air, source: COMMON_PRACTICE };
}
