import { fromMemory, type Source } from '../entry/source.js';
import { hours, type Hours } from '../units/time.js';
import { equivalentAge, fhpRate } from './equivalent-age.js';
import type { CureInterval } from './interval.js';
import { nurseSaulAge } from './nurse-saul.js';

/** The method in words, for every place where an age or a strength is shown. */
export const CAUTIOUS_METHOD =
  'lesser of Nurse–Saul (datum 0 °C) and Freiesleben Hansen–Pedersen, equivalent age at 20 °C';

/** Where the method comes from. */
export const CAUTIOUS_SOURCE: Source = fromMemory('ASTM C1074; Freiesleben Hansen and Pedersen 1977');

/** Equivalent age by the cautious pair: whichever of the two counts for less. */
export const cautiousAge = (intervals: readonly CureInterval[]): Hours =>
  hours(Math.min(nurseSaulAge(intervals), equivalentAge(intervals, fhpRate)));
