import { describe, expect, it } from '@jest/globals';
import { daysFrom } from '../../time/zone-days.js';
import { dayWeather, forecastEnd } from './day-weather.js';

const days = daysFrom('2031-01-13', 3, 'America/New_York');
const hour = (at: string, temperatureF: number, rainInches: number | null = 0) => ({
  at,
  temperatureF,
  rainInches,
});

const forecast = {
  id: 'f',
  source: 'file',
  issuedAt: '2031-01-13T05:00:00Z',
  hours: [
    hour('2031-01-13T12:00:00Z', 21.6),
    hour('2031-01-13T18:00:00Z', 34.4, 0.03),
    hour('2031-01-14T04:00:00Z', 18, 0.04),
    hour('2031-01-14T05:00:00Z', 17, null),
  ],
};

describe('the weather of a day', () => {
  it('gathers the hours of the day in its zone', () => {
    expect(dayWeather(forecast, days).get('2031-01-13')).toMatchObject({ low: 18, high: 34 });
    expect(dayWeather(forecast, days).get('2031-01-13')?.rainInches).toBeCloseTo(0.07, 9);
    expect(dayWeather(forecast, days).get('2031-01-14')).toMatchObject({ low: 17, high: 17, rainInches: 0 });
  });

  it('is unknown past the forecast, not fair', () => {
    expect(dayWeather(forecast, days).has('2031-01-15')).toBe(false);
    expect(forecastEnd(forecast)).toBe(Date.parse('2031-01-14T06:00:00Z'));
  });

  it('is unknown everywhere without a forecast', () => {
    expect(dayWeather(null, days).size).toBe(0);
    expect(forecastEnd(null)).toBeNull();
  });
});
