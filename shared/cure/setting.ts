import { fromMemory, type Source } from '../entry/source.js';
import { celsius, toCelsius, type Fahrenheit } from '../units/temperature.js';
import { arrheniusRate } from './equivalent-age.js';

/** Where the speed of setting comes from. */
export const SETTING_SOURCE: Source = fromMemory('ASTM C1074: activation temperature 5000 K for setting');

const rate = arrheniusRate(5000, celsius(20));

/** How many times as long setting takes at `to` as at `from`. */
export const settingFactor = (from: Fahrenheit, to: Fahrenheit): number =>
  rate(toCelsius(from)) / rate(toCelsius(to));
