import type { DayWeather } from '../layout/day-weather.js';

/** "26 to 46 °F, wind to 12 mph, gusts to 20 mph, rain 0.3 in, chance of rain to 75 %"; what is unknown is said so. */
export function skyWords({ low, high, windMph, gustMph, rainInches, rainChance }: DayWeather): string {
  return [
    low === high ? `${low} °F` : `${low} to ${high} °F`,
    windMph === null ? 'wind unknown' : `wind to ${Math.round(windMph)} mph`,
    ...(gustMph === null ? [] : [`gusts to ${Math.round(gustMph)} mph`]),
    rainInches === null
      ? 'rain unknown'
      : rainInches < 0.005
        ? 'no rain'
        : `rain ${rainInches.toFixed(2)} in`,
    ...(rainChance === null ? [] : [`chance of rain to ${Math.round(rainChance)} %`]),
  ].join(', ');
}
