import { published, type Source } from '../../entry/source.js';
import type { Inches } from '../../units/length.js';
import {
  fahrenheit,
  fahrenheitDegrees,
  type Fahrenheit,
  type FahrenheitDegrees,
} from '../../units/temperature.js';

/** Where the table comes from. */
export const SECTION_TABLE_SOURCE: Source = published('ACI 306.1-90 as restated by Beall 2004, fig. 3-37');

/** What cold weather asks of a section of a size. */
export interface SectionLimits {
  /** Least temperature as placed and kept. */
  readonly placed: Fahrenheit;
  /** Least temperature as mixed: air above 30 °F, 0 to 30 °F, below 0 °F. */
  readonly mixed: readonly [Fahrenheit, Fahrenheit, Fahrenheit];
  /** Largest drop in any 24 h once protection ends. */
  readonly drop: FahrenheitDegrees;
}

const row = (placed: number, mixed: readonly [number, number, number], drop: number): SectionLimits => ({
  placed: fahrenheit(placed),
  mixed: [fahrenheit(mixed[0]), fahrenheit(mixed[1]), fahrenheit(mixed[2])],
  drop: fahrenheitDegrees(drop),
});

const UNDER_12 = row(55, [60, 65, 70], 50);
const TO_36 = row(50, [55, 60, 65], 40);
const TO_72 = row(45, [50, 55, 60], 30);
const OVER_72 = row(40, [45, 50, 55], 20);

/** Limits by the least dimension of a section: under 12 in, 12 to 36, 36 to 72, over 72. */
export function sectionLimits(least: Inches): SectionLimits {
  if (!(least > 0)) throw new RangeError(`A section of ${least} in; give its least dimension in inches`);
  if (least < 12) return UNDER_12;
  if (least <= 36) return TO_36;
  return least <= 72 ? TO_72 : OVER_72;
}

/** Least temperature as mixed for a section in an air temperature. */
export function asMixed(least: Inches, air: Fahrenheit): Fahrenheit {
  const { mixed } = sectionLimits(least);
  if (air > 30) return mixed[0];
  return air >= 0 ? mixed[1] : mixed[2];
}
