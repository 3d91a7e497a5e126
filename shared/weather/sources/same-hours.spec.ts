import { describe, expect, it } from '@jest/globals';
import { fahrenheit } from '../../units/temperature.js';
import { epochMs, HOUR_MS } from '../../units/time.js';
import type { Forecast } from '../forecast.js';
import { sameHours } from './same-hours.js';

const START = Date.parse('2031-01-06T12:00:00Z');
const at = (hour: number) => epochMs(START + hour * HOUR_MS);
const forecast = (hours: readonly (readonly [number, number | null])[], issued = 0): Forecast => ({
  issuedAt: at(issued),
  hours: hours.map(([hour, degrees]) => ({
    at: at(hour),
    temperature: degrees === null ? null : fahrenheit(degrees),
    dewPoint: null,
    wind: null,
    gust: null,
    rainChance: null,
    rainAmount: null,
  })),
});
const run = (from: number, count: number, degrees: number) =>
  Array.from({ length: count }, (_, i) => [from + i, degrees] as const);

describe('two forecasts', () => {
  const base = forecast(run(0, 4, 30));

  it('are the same whatever was said of hours before, and whenever they were issued', () => {
    const other = forecast([[0, 99], ...run(1, 3, 30)], 3);
    expect(sameHours(base, other, at(1))).toBe(true);
    expect(sameHours(base, other, at(0))).toBe(false);
  });

  it('are the same within the rounding of a conversion and no further', () => {
    expect(sameHours(base, forecast(run(0, 4, 30 + 1e-9)), at(0))).toBe(true);
    expect(sameHours(base, forecast(run(0, 4, 30.01)), at(0))).toBe(false);
  });

  it.each([
    ['an hour more', run(0, 5, 30)],
    ['an hour less', run(0, 3, 30)],
    ['another hour', [...run(0, 3, 30), [4, 30] as const]],
    ['an unknown value', [...run(0, 3, 30), [3, null] as const]],
  ])('differ by %s', (_what, hours) => {
    expect(sameHours(base, forecast(hours), at(0))).toBe(false);
    expect(sameHours(forecast(hours), base, at(0))).toBe(false);
  });

  it('are the same where both know nothing', () => {
    const unknown = forecast([[0, null]]);
    expect(sameHours(unknown, forecast([[0, null]]), at(0))).toBe(true);
  });
});
