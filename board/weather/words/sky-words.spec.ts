import { describe, expect, it } from '@jest/globals';
import { trialForecast } from '../testing/trial-weather.js';
import { ageWords, forecastWords } from './forecast-words.js';
import { skyWords } from './sky-words.js';

const DAY = {
  date: '2031-01-15',
  low: 26,
  high: 46,
  windMph: 12.4,
  gustMph: 20,
  rainChance: 75,
  rainInches: 0.3,
};

describe('the weather of a day in words', () => {
  it('has temperature, wind and rain with their units', () => {
    expect(skyWords(DAY)).toBe(
      '26 to 46 °F, wind to 12 mph, gusts to 20 mph, rain 0.30 in, chance of rain to 75 %',
    );
  });

  it('says what is unknown instead of calling it calm or dry', () => {
    expect(skyWords({ ...DAY, windMph: null, gustMph: null, rainChance: null, rainInches: null })).toBe(
      '26 to 46 °F, wind unknown, rain unknown',
    );
    expect(skyWords({ ...DAY, low: 46, rainInches: 0 })).toContain('46 °F, wind to 12 mph');
    expect(skyWords({ ...DAY, rainInches: 0 })).toContain('no rain');
  });
});

describe('a forecast in words', () => {
  const now = Date.parse('2031-01-13T10:30:00Z');

  it('has its time, its age and its source', () => {
    expect(forecastWords(trialForecast([]), now, 'America/New_York')).toBe(
      'Forecast of Mon 13 Jan 00:00, 5 h 30 min old, from: test sheet',
    );
  });

  it('that there is none is not fair weather', () => {
    expect(forecastWords(null, now, 'America/New_York')).toBe('No forecast: the weather is unknown');
  });

  it.each([
    ['2031-01-13T10:20:00Z', 'new'],
    ['2031-01-13T10:45:00Z', 'new'],
    ['2031-01-12T08:30:00Z', '1 d 2 h old'],
  ])('issued at %s is %s', (issuedAt, words) => {
    expect(ageWords(issuedAt, now)).toBe(words);
  });
});
