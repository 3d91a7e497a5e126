import { COMMON_PRACTICE } from '../../entry/source.js';
import { inches } from '../../units/length.js';
import { fahrenheit } from '../../units/temperature.js';
import { epochMs, HOUR_MS, type EpochMs } from '../../units/time.js';
import { milesPerHour, percent } from '../../units/weather-units.js';
import type { Forecast, ForecastHour } from '../forecast.js';
import type { WeatherLimit } from '../weather-limit.js';

/** Begin of the hour numbered 0 in tests. */
export const START = Date.UTC(2026, 0, 14, 11);

/** Begin of a numbered hour. */
export const h = (hour: number): EpochMs => epochMs(START + hour * HOUR_MS);

/** A fair hour, with other values where given. */
export const fairHour = (i: number, values: Partial<ForecastHour> = {}): ForecastHour => ({
  at: h(i),
  temperature: fahrenheit(50),
  dewPoint: null,
  wind: milesPerHour(5),
  gust: milesPerHour(9),
  rainChance: percent(0),
  rainAmount: inches(0),
  ...values,
});

/** A forecast of one temperature an hour in °F, null where it is unknown. */
export const temperatures = (...values: readonly (number | null)[]): Forecast => ({
  issuedAt: h(-1),
  hours: values.map((value, i) => fairHour(i, { temperature: value === null ? null : fahrenheit(value) })),
});

/** A limit that closes under 40 °F, with other members where given. */
export const coldLimit = (more: Partial<WeatherLimit> = {}): WeatherLimit => ({
  id: 'cold',
  measure: 'temperature',
  stop: 'below',
  value: 40,
  inclusive: false,
  aheadHours: 0,
  backHours: 0,
  liftedBy: [],
  text: 'Too cold',
  source: COMMON_PRACTICE,
  ...more,
});

/** Begin and end of stretches as numbers of hours. */
export const inHours = (stretches: readonly { readonly from: number; readonly to: number }[]): number[][] =>
  stretches.map(({ from, to }) => [(from - START) / HOUR_MS, (to - START) / HOUR_MS]);
