import type { Answer } from './answer.js';
import type { ForecastHour } from './forecast.js';
import { hourValue } from './hour-value.js';
import type { WeatherLimit } from './weather-limit.js';

/** Whether an hour breaks a limit by itself, without regard to what comes before and after. */
export function exceeds(limit: WeatherLimit, hour: ForecastHour): Answer {
  return exceedsWith(limit, hourValue(limit.measure, hour), hour);
}

/** Whether a value of the limit's measure breaks it in an hour, which tells the second value where one is needed. */
export function exceedsWith(limit: WeatherLimit, value: number | null, hour: ForecastHour | null): Answer {
  if (value === null) return 'unknown';
  if (!isBeyond(limit, value)) return false;
  if (!limit.and) return true;
  const other = hour && hourValue(limit.and.measure, hour);
  return other === null ? 'unknown' : other > limit.and.above;
}

/** Whether a value lies on the wrong side of a limit. */
export function isBeyond(limit: Pick<WeatherLimit, 'stop' | 'value' | 'inclusive'>, value: number): boolean {
  if (value === limit.value) return limit.inclusive;
  return limit.stop === 'below' ? value < limit.value : value > limit.value;
}
