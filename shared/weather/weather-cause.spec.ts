import { describe, expect, it } from '@jest/globals';
import { coldLimit, h } from './testing/hour-values.js';
import { weatherCause, worseOf } from './weather-cause.js';
import type { WeatherLimit } from './weather-limit.js';

const text = (value: number, more: Partial<WeatherLimit> = {}) =>
  weatherCause(coldLimit(more), h(0), value).text;

describe('a cause in words', () => {
  it('says limit and value with the unit, and the side it lies on', () => {
    expect(text(36)).toBe('Too cold: 36 °F, under 40 °F');
    expect(text(40, { inclusive: true })).toBe('Too cold: 40 °F, at 40 °F');
    expect(text(95, { stop: 'above', value: 90, text: 'Too hot' })).toBe('Too hot: 95 °F, over 90 °F');
    expect(text(0.123, { measure: 'rainAmount', stop: 'above', value: 0.05, text: 'Rain' })).toBe(
      'Rain: 0.12 in, over 0.05 in',
    );
  });

  it('says evaporation as closely as its limit needs', () => {
    const drying = { measure: 'evaporation', stop: 'above', value: 0.2, text: 'Drying' } as const;
    expect(text(0.2044, drying)).toBe('Drying: 0.204 lb/ft²/h, over 0.2 lb/ft²/h');
  });

  it('says that it is a mean', () => {
    expect(text(38, { dailyMean: 'after' })).toBe('Too cold: daily mean 38 °F, under 40 °F');
  });

  it('says what an hour waits for that is closed though it is not beyond the limit', () => {
    const reopen = { value: 45, inclusive: false, hours: 0, within: 0 };
    expect(text(43, { reopen })).toBe('Too cold: 43 °F, closed until over 45 °F');
    expect(text(43, { reopen: { ...reopen, hours: 3, within: 3 } })).toBe(
      'Too cold: 43 °F, closed until over 45 °F for 3 h',
    );
    expect(text(43, { turningHours: 3 })).toBe('Too cold: 43 °F, closed since it was under 40 °F');
  });
});

describe('the worse of two causes', () => {
  const cause = (value: number, hour: number) => weatherCause(coldLimit(), h(hour), value);

  it('lies further beyond the limit; of equal ones it is the earlier', () => {
    expect(worseOf(coldLimit(), cause(36, 0), cause(35, 1)).value).toBe(35);
    expect(worseOf(coldLimit({ stop: 'above' }), cause(36, 0), cause(35, 1)).value).toBe(36);
    expect(worseOf(coldLimit(), cause(36, 2), cause(36, 1)).hour).toBe(h(1));
  });
});
