import type { ForecastHour } from './forecast.js';
import type { WeatherLimit } from './weather-limit.js';

/** Whether an hour stops the work by this limit; `unknown` when the forecast does not say. */
export function exceeds(limit: WeatherLimit, hour: ForecastHour): boolean | 'unknown' {
  const value = hour[limit.measure];
  if (value === null) return 'unknown';
  if (!beyond(limit, value)) return false;
  if (!limit.and) return true;
  const other = hour[limit.and.measure];
  return other === null ? 'unknown' : other > limit.and.above;
}

function beyond({ stop, value: bound, inclusive }: WeatherLimit, value: number): boolean {
  if (value === bound) return inclusive;
  return stop === 'below' ? value < bound : value > bound;
}
