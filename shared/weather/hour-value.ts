import { fahrenheit } from '../units/temperature.js';
import { evaporationUs } from './evaporation.js';
import type { ForecastHour } from './forecast.js';
import { humidity } from './humidity.js';
import type { LimitMeasure } from './weather-limit.js';

/**
 * Fresh concrete is taken to be this warm, or as warm as the air where that is warmer: the temperature as mixed for
 * thin sections in mild cold (ACI 306.1-90 as restated by Beall 2004, fig. 3-37).
 */
export const FRESH_CONCRETE = fahrenheit(60);

/** What a limit looks at in an hour, in the unit of its measure; null where the forecast does not say. */
export function hourValue(measure: LimitMeasure, hour: ForecastHour): number | null {
  return measure === 'evaporation' ? drying(hour) : hour[measure];
}

function drying({ temperature, dewPoint, wind }: ForecastHour): number | null {
  if (temperature === null || dewPoint === null || wind === null) return null;
  const concrete = fahrenheit(Math.max(FRESH_CONCRETE, temperature));
  return evaporationUs({ concrete, air: temperature, humidity: humidity(temperature, dewPoint), wind });
}
