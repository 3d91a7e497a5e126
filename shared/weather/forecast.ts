import type { Inches } from '../units/length.js';
import type { Fahrenheit } from '../units/temperature.js';
import type { EpochMs } from '../units/time.js';
import type { MilesPerHour, Percent } from '../units/weather-units.js';

/** One hour of a forecast: the value holds from `at` for an hour. Null is unknown, never fair. */
export interface ForecastHour {
  readonly at: EpochMs;
  readonly temperature: Fahrenheit | null;
  readonly dewPoint: Fahrenheit | null;
  readonly wind: MilesPerHour | null;
  readonly gust: MilesPerHour | null;
  readonly rainChance: Percent | null;
  /** Water falling in the hour. */
  readonly rainAmount: Inches | null;
}

/** An hourly forecast, in order of time, at most one hour of each. Hours left out are unknown. */
export interface Forecast {
  readonly issuedAt: EpochMs;
  readonly hours: readonly ForecastHour[];
}
