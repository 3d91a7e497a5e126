import { toCelsius, toKelvin, type Fahrenheit } from '../../units/temperature.js';

/** Pressure of the air at sea level, Pa. */
export const STANDARD_PRESSURE = 101_325;
/** Weight of a molecule of water to one of dry air. */
const WATER_TO_AIR = 0.621945;

/**
 * Pressure of water vapour over ice (below 32 °F) or over water, Pa. Source, from memory: ASHRAE Handbook of Fundamentals,
 * the equations of Hyland and Wexler.
 */
export function saturationPressure(temperature: Fahrenheit): number {
  const t = toKelvin(toCelsius(temperature));
  return Math.exp(temperature < 32 ? overIce(t) : overWater(t));
}

const overIce = (t: number): number =>
  -5674.5359 / t +
  6.3925247 -
  9.677843e-3 * t +
  6.2215701e-7 * t ** 2 +
  2.0747825e-9 * t ** 3 -
  9.484024e-13 * t ** 4 +
  4.1635019 * Math.log(t);

const overWater = (t: number): number =>
  -5800.2206 / t +
  1.3914993 -
  4.8640239e-2 * t +
  4.1764768e-5 * t ** 2 -
  1.4452093e-8 * t ** 3 +
  6.5459673 * Math.log(t);

/** Water in a pound of dry air that is saturated at `dewPoint`, lb/lb. */
export function humidityRatio(dewPoint: Fahrenheit, pressure = STANDARD_PRESSURE): number {
  const vapour = saturationPressure(dewPoint);
  return (WATER_TO_AIR * vapour) / (pressure - vapour);
}
