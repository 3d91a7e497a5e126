import type { BoardWeatherQuery } from '../../api/documents.js';
import type { Day } from '../../time/zone-days.js';

type Forecast = BoardWeatherQuery['board']['jobs'][number]['site']['forecast'];

/** The forecast of one day at one site. */
export interface DayWeather {
  readonly date: string;
  readonly low: number;
  readonly high: number;
  readonly rainInches: number;
}

/** Low, high and rain of each day that the forecast covers; a day it does not reach is not in the map: unknown. */
export function dayWeather(forecast: Forecast, days: readonly Day[]): ReadonlyMap<string, DayWeather> {
  const hours = (forecast?.hours ?? []).map((hour) => ({ ...hour, moment: Date.parse(hour.at) }));
  const found = days.flatMap((day): DayWeather[] => {
    const inDay = hours.filter(({ moment }) => moment >= day.start && moment < day.end);
    const temperatures = inDay.flatMap(({ temperatureF }) => temperatureF ?? []);
    if (temperatures.length === 0) return [];
    return [
      {
        date: day.date,
        low: Math.round(Math.min(...temperatures)),
        high: Math.round(Math.max(...temperatures)),
        rainInches: inDay.reduce((sum, { rainInches }) => sum + (rainInches ?? 0), 0),
      },
    ];
  });
  return new Map(found.map((weather) => [weather.date, weather]));
}

/** When the forecast ends: from here on the weather is unknown; null without a forecast. */
export function forecastEnd(forecast: Forecast): number | null {
  const last = forecast?.hours.at(-1);
  return last ? Date.parse(last.at) + 3_600_000 : null;
}
