import type { Axis } from '../../board/layout/axis.js';
import { type DayWeather, forecastEnd } from './day-weather.js';
import type { SiteForecast } from '../site-weather.js';

/** A part of the strip that can be gone to: a day that the forecast covers, or all that it does not reach. */
export interface WeatherCell {
  /** The day, or the first one that is unknown. */
  readonly date: string;
  readonly left: number;
  readonly width: number;
  readonly unknown: boolean;
}

/** The days of the forecast, and one cell for what lies beyond it; days that are past have none. */
export function weatherCells(
  weather: ReadonlyMap<string, DayWeather>,
  forecast: SiteForecast,
  axis: Axis,
  now: number,
): WeatherCell[] {
  const { days, dayWidth } = axis;
  const covered = days.flatMap(({ date, end }, index): WeatherCell[] =>
    weather.has(date) && end > now ? [{ date, left: index * dayWidth, width: dayWidth, unknown: false }] : [],
  );
  const beyond = Math.max(now, forecastEnd(forecast) ?? 0);
  const first = days.findIndex(({ date, end }) => end > beyond && !weather.has(date));
  const day = days[first];
  if (!day) return covered;
  const left = first * dayWidth;
  return [...covered, { date: day.date, left, width: axis.width - left, unknown: true }];
}
