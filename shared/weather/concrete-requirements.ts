import { published, type Source } from '../entry/source.js';
import { over, under } from './given-limit.js';
import type { WeatherLimit } from './weather-limit.js';

/** Where the temperatures of concrete come from. */
export const CONCRETE_SOURCE: Source = published(
  'ACI 306.1-90 as restated by Beall 2004: mixed 60–70 °F and kept at 55 °F under protection',
);

/** Hours for which concrete without load is protected: two days (ACI 306.1-90 as restated by Beall 2004, fig. 3-38). */
const PROTECTION_HOURS = 48;

/**
 * What concrete of sections under 12 in asks for. Cold weather has two definitions that are kept apart: the mean daily
 * temperature below 40 °F for more than three days, ended by more than half a day over 50 °F; and air at or expected
 * below 40 °F within the time of protection.
 */
export const CONCRETE_REQUIREMENTS: readonly WeatherLimit[] = [
  under(published('ACI 306.1-90'), {
    id: 'cold-period',
    measure: 'temperature',
    value: 40,
    dailyMean: 'before',
    lastingHours: 72,
    reopen: { value: 50, inclusive: false, hours: 13, within: 24 },
    text: 'Cold weather by its mean daily temperature: place at 55 °F or more and keep it there through the protection time',
  }),
  under(published('ACI 306R-16'), {
    id: 'cold-expected',
    measure: 'temperature',
    value: 40,
    inclusive: true,
    aheadHours: PROTECTION_HOURS,
    text: 'Cold weather within the protection time: have blankets or enclosure and heat at hand before placing',
  }),
  under(CONCRETE_SOURCE, {
    id: 'mix-60',
    measure: 'temperature',
    value: 40,
    inclusive: true,
    text: 'Concrete at 60 °F or more as mixed',
  }),
  under(CONCRETE_SOURCE, {
    id: 'mix-65',
    measure: 'temperature',
    value: 30,
    inclusive: true,
    text: 'Concrete at 65 °F or more as mixed',
  }),
  under(CONCRETE_SOURCE, {
    id: 'mix-70',
    measure: 'temperature',
    value: 0,
    text: 'Concrete at 70 °F or more as mixed',
  }),
  over(published('UFGS 03 30 00, rate by Uno 1998 for concrete at 60 °F, or as warm as the air'), {
    id: 'drying',
    measure: 'evaporation',
    value: 0.2,
    text: 'Dries too fast: windbreak, fog or cover it at once after finishing',
  }),
];
