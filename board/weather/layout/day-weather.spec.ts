import { describe, expect, it } from '@jest/globals';
import { daysFrom } from '../../time/zone-days.js';
import { hoursFrom, trialForecast, trialHour } from '../testing/trial-weather.js';
import { dayWeather, forecastEnd } from './day-weather.js';

const days = daysFrom('2031-01-13', 3, 'America/New_York');
const forecast = trialForecast([
  trialHour('2031-01-13T12:00:00Z', { temperatureF: 21.6, windMph: 8, gustMph: 19 }),
  trialHour('2031-01-13T18:00:00Z', { temperatureF: 34.4, windMph: 14.4, rainInches: 0.03, rainChance: 60 }),
  trialHour('2031-01-14T04:00:00Z', { temperatureF: 18, rainInches: 0.04 }),
  trialHour('2031-01-14T05:00:00Z', {
    temperatureF: 17,
    windMph: null,
    rainInches: null,
    rainChance: null,
  }),
]);

describe('the weather of a day', () => {
  it('gathers the hours of the day in its zone', () => {
    const first = dayWeather(forecast, days).get('2031-01-13');
    expect(first).toMatchObject({ low: 18, high: 34, windMph: 14.4, gustMph: 19, rainChance: 60 });
    expect(first?.rainInches).toBeCloseTo(0.07, 9);
  });

  it('is not calm and dry where nobody forecast wind and rain', () => {
    expect(dayWeather(forecast, days).get('2031-01-14')).toMatchObject({
      low: 17,
      high: 17,
      windMph: null,
      gustMph: null,
      rainChance: null,
      rainInches: null,
    });
  });

  it('is unknown past the forecast, not fair', () => {
    expect(dayWeather(forecast, days).has('2031-01-15')).toBe(false);
    expect(forecastEnd(forecast)).toBe(Date.parse('2031-01-14T06:00:00Z'));
  });

  it('is unknown everywhere without a forecast', () => {
    expect(dayWeather(null, days).size).toBe(0);
    expect(forecastEnd(null)).toBeNull();
  });

  it('has 23 hours on the day when clocks go forward, each counted once', () => {
    // IANA zone data: in New York clocks go from 02:00 to 03:00 on Sunday 9 March 2031.
    const spring = daysFrom('2031-03-09', 1, 'America/New_York');
    const wet = trialForecast(hoursFrom('2031-03-09T00:00:00Z', 72, () => ({ rainInches: 0.01 })));
    expect(dayWeather(wet, spring).get('2031-03-09')?.rainInches).toBeCloseTo(0.23, 9);
  });
});
