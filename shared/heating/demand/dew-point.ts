import { fahrenheit, type Fahrenheit } from '../../units/temperature.js';
import type { Percent } from '../../units/weather-units.js';
import { saturationPressure } from './saturation-pressure.js';

/**
 * Temperature at which air of a relative humidity is saturated, found by halving: the pressure only ever rises with the
 * temperature. Below 32 °F it is the frost point. Throws unless the humidity is above 0 and at most 100 %.
 */
export function dewPoint(air: Fahrenheit, humidity: Percent): Fahrenheit {
  if (!(humidity > 0 && humidity <= 100))
    throw new RangeError(`relative humidity must be above 0 and at most 100 %, got ${humidity}`);
  const wanted = (saturationPressure(air) * humidity) / 100;
  let low: number = air - 150;
  let high: number = air;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (saturationPressure(fahrenheit(middle)) < wanted) low = middle;
    else high = middle;
  }
  return fahrenheit(high);
}
