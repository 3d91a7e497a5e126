import type { Day } from '../../time/zone-days.js';
import { type ForecastHour, HOUR_MS, type SiteForecast } from '../site-weather.js';

/** The forecast of one day at one site. What nobody forecast is null: unknown, not calm and not dry. */
export interface DayWeather {
  readonly date: string;
  readonly low: number;
  readonly high: number;
  readonly windMph: number | null;
  readonly gustMph: number | null;
  readonly rainChance: number | null;
  readonly rainInches: number | null;
}

type Timed = ForecastHour & { readonly moment: number };

const timedHours = new WeakMap<readonly ForecastHour[], readonly Timed[]>();

/** The hours of a forecast with their moments, read once: a board asks for hundreds of sites at every step. */
function timed(hours: readonly ForecastHour[]): readonly Timed[] {
  const known = timedHours.get(hours);
  if (known) return known;
  const made = hours
    .map((hour) => ({ ...hour, moment: Date.parse(hour.at) }))
    .sort((a, b) => a.moment - b.moment);
  timedHours.set(hours, made);
  return made;
}

/** Each day that the forecast covers; a day it does not reach is not in the map: unknown. */
export function dayWeather(forecast: SiteForecast, days: readonly Day[]): ReadonlyMap<string, DayWeather> {
  const hours = timed(forecast?.hours ?? []);
  const [first, last] = [hours[0]?.moment ?? 0, hours.at(-1)?.moment ?? 0];
  const found = days.flatMap((day): DayWeather[] => {
    if (day.end <= first || day.start > last) return [];
    const inDay = hours.filter(({ moment }) => moment >= day.start && moment < day.end);
    const temperatures = known(inDay, 'temperatureF');
    if (temperatures.length === 0) return [];
    return [
      {
        date: day.date,
        low: Math.round(Math.min(...temperatures)),
        high: Math.round(Math.max(...temperatures)),
        windMph: most(known(inDay, 'windMph')),
        gustMph: most(known(inDay, 'gustMph')),
        rainChance: most(known(inDay, 'rainChance')),
        rainInches: sum(known(inDay, 'rainInches')),
      },
    ];
  });
  return new Map(found.map((weather) => [weather.date, weather]));
}

/** When the forecast ends: from here on the weather is unknown; null without a forecast. */
export function forecastEnd(forecast: SiteForecast): number | null {
  const last = forecast?.hours.at(-1);
  return last ? Date.parse(last.at) + HOUR_MS : null;
}

const known = (hours: readonly ForecastHour[], measure: Exclude<keyof ForecastHour, 'at' | '__typename'>) =>
  hours.flatMap((hour): number[] => {
    const value = hour[measure];
    return value === null ? [] : [value];
  });

const most = (values: readonly number[]): number | null => (values.length === 0 ? null : Math.max(...values));

const sum = (values: readonly number[]): number | null =>
  values.length === 0 ? null : values.reduce((total, value) => total + value, 0);
