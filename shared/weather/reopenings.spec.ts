import { describe, expect, it } from '@jest/globals';
import { reopenings } from './reopenings.js';
import { coldLimit } from './testing/hour-values.js';
import type { Reopening, WeatherLimit } from './weather-limit.js';

const opens = (limit: Partial<WeatherLimit>, ...values: readonly (number | null)[]) =>
  reopenings(coldLimit(limit), values) ?? [];
const reopen = (more: Partial<Reopening> = {}): Reopening => ({
  value: 45,
  inclusive: false,
  hours: 0,
  within: 0,
  ...more,
});

describe('an hour that opens a limit again', () => {
  it('is any where the limit has nothing to say of it', () => {
    expect(reopenings(coldLimit(), [30, 50])).toBeNull();
  });

  it('lies beyond the other value, or at it where it says so', () => {
    expect(opens({ reopen: reopen() }, 44, 45, 46, null)).toEqual([false, false, true, 'unknown']);
    expect(opens({ reopen: reopen({ inclusive: true }) }, 45)).toEqual([true]);
    expect(opens({ stop: 'above', value: 90, reopen: reopen({ value: 85 }) }, 86, 85, 84)).toEqual([
      false,
      false,
      true,
    ]);
  });

  it('comes after fair hours in a row', () => {
    expect(opens({ reopen: reopen({ hours: 2, within: 2 }) }, 40, 46, 46, 40, 46, 40)).toEqual([
      'unknown',
      false,
      false,
      true,
      false,
      false,
    ]);
  });

  it('comes after fair hours among the last', () => {
    expect(opens({ reopen: reopen({ hours: 2, within: 3 }) }, 40, 46, 40, 46, 40)).toEqual([
      'unknown',
      'unknown',
      'unknown',
      false,
      true,
    ]);
  });

  it('is unknown while unknown hours decide', () => {
    const two = { reopen: reopen({ hours: 2, within: 3 }) };
    expect(opens(two, 40, 46, null, 46, 40).at(-1)).toBe(true);
    expect(opens(two, 40, 46, null, 40, 40).at(-1)).toBe('unknown');
    expect(opens(two, 40, 40, null, 40, 40).at(-1)).toBe(false);
  });

  it('turns, with the value of the limit expected in time', () => {
    const turning = { turningHours: 2 };
    expect(opens(turning, 30, 35, 38, 41, 42)).toEqual([false, false, false, true, true]);
    const early = { turningHours: 2, reopen: reopen({ value: 34 }) };
    expect(opens(early, 30, 35, 38, 41, 42)).toEqual([false, true, true, true, true]);
    expect(opens(early, 30, 35, 36, 37, 38).slice(0, 3)).toEqual([false, false, false]);
    expect(opens(early, 30, 35, 36)).toEqual([false, 'unknown', 'unknown']);
    expect(opens(early, 36, 35, 44)).toEqual(['unknown', false, true]);
  });
});
