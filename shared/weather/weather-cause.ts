import type { EpochMs } from '../units/time.js';
import type { ForecastHour } from './forecast.js';
import { LIMIT_UNITS, type WeatherLimit } from './weather-limit.js';

/** Why a stretch is closed: the limit, and the worst hour of those that exceed it. */
export interface WeatherCause {
  readonly limitId: string;
  readonly label: string;
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  /** Start of the hour with that value. */
  readonly hour: EpochMs;
  readonly text: string;
}

/** The cause that one hour is. The hour has a value: it exceeds the limit. */
export function weatherCause(limit: WeatherLimit, hour: ForecastHour, value: number): WeatherCause {
  const unit = LIMIT_UNITS[limit.measure];
  const bound = `${limit.value} ${unit}`;
  const shown = `${Math.round(value * 100) / 100} ${unit}`;
  const compared =
    value === limit.value ? `at ${bound}` : `${limit.stop === 'below' ? 'under' : 'over'} ${bound}`;
  return {
    limitId: limit.id,
    label: limit.text,
    value,
    limit: limit.value,
    unit,
    hour: hour.at,
    text: `${limit.text}: ${shown}, ${compared}`,
  };
}

/** The worse of two causes of one limit; of equal ones the earlier. */
export function worseOf(limit: WeatherLimit, a: WeatherCause, b: WeatherCause): WeatherCause {
  if (a.value === b.value) return a.hour <= b.hour ? a : b;
  return (limit.stop === 'below') === a.value < b.value ? a : b;
}
