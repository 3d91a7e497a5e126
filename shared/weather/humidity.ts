import { published, type Source } from '../entry/source.js';
import { toCelsius, type Celsius, type Fahrenheit } from '../units/temperature.js';
import { percent, type Percent } from '../units/weather-units.js';

/** Where the vapour pressure over water comes from. */
export const HUMIDITY_SOURCE: Source = published(
  'WMO-No. 8, Guide to Instruments and Methods of Observation, Magnus form',
);

/** Relative humidity from the dew point, over water: the ratio of the vapour pressures; at most 100 %. */
export function humidity(air: Fahrenheit, dewPoint: Fahrenheit): Percent {
  const ratio = vapourPressure(toCelsius(dewPoint)) / vapourPressure(toCelsius(air));
  return percent(Math.min(100, 100 * ratio));
}

/** Saturation vapour pressure over water in hPa: 6.112·exp(17.62·t / (243.12 + t)), t in °C. */
const vapourPressure = (t: Celsius): number => 6.112 * Math.exp((17.62 * t) / (243.12 + t));
