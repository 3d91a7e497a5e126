import { describe, expect, it } from '@jest/globals';
import { makeAxis } from '../../board/layout/axis.js';
import { daysFrom } from '../../time/zone-days.js';
import { hoursFrom, trialForecast } from '../testing/trial-weather.js';
import { dayWeather } from './day-weather.js';
import { weatherCells } from './weather-cells.js';

const axis = makeAxis(daysFrom('2031-01-13', 7, 'America/New_York'), 80);
const NOW = Date.parse('2031-01-14T15:00:00Z');
const cells = (forecast: ReturnType<typeof trialForecast> | null, now = NOW) =>
  weatherCells(dayWeather(forecast, axis.days), forecast, axis, now).map(({ date, left, width, unknown }) => [
    date,
    left,
    width,
    unknown,
  ]);

describe('the parts of the weather that can be gone to', () => {
  it('are the days that the forecast covers from today on, and all the rest as one', () => {
    const forecast = trialForecast(hoursFrom('2031-01-13T05:00:00Z', 72));
    expect(cells(forecast)).toEqual([
      ['2031-01-14', 80, 80, false],
      ['2031-01-15', 160, 80, false],
      ['2031-01-16', 240, 320, true],
    ]);
  });

  it('is unknown from today on without a forecast, and with one that has run out', () => {
    expect(cells(null)).toEqual([['2031-01-14', 80, 480, true]]);
    expect(cells(trialForecast(hoursFrom('2031-01-10T05:00:00Z', 24)))).toEqual([
      ['2031-01-14', 80, 480, true],
    ]);
  });

  it('are none where all days are past', () => {
    expect(cells(null, Date.parse('2031-02-01T15:00:00Z'))).toEqual([]);
  });
});
