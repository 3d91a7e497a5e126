import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  addHours,
  days,
  daysToMinutes,
  epochMs,
  hours,
  hoursBetween,
  hoursToMinutes,
  minutes,
  roundUpToQuarter,
} from './time.js';

describe('time', () => {
  it('a day of cure is 24 hours, whatever the clock does', () => {
    expect(daysToMinutes(days(1))).toBe(1440);
    expect(hoursToMinutes(hours(24))).toBe(1440);
  });

  it('hours between two instants are negative backwards', () => {
    const noon = epochMs(Date.UTC(2026, 0, 14, 12));
    expect(hoursBetween(noon, addHours(noon, hours(2.5)))).toBe(2.5);
    expect(hoursBetween(addHours(noon, hours(1)), noon)).toBe(-1);
  });
});

describe('rounding to the planning grid', () => {
  it.each([
    [0, 0],
    [0.01, 15],
    [15, 15],
    [15.0000000001, 15],
    [15.1, 30],
    [59, 60],
  ])('%p minutes become %p', (given, rounded) => {
    expect(roundUpToQuarter(minutes(given))).toBe(rounded);
  });

  it('never shortens by more than float noise and never adds a whole quarter', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e5, noNaN: true }), (given) => {
        const rounded = roundUpToQuarter(minutes(given));
        expect(rounded % 15).toBe(0);
        expect(rounded).toBeGreaterThanOrEqual(given - 1e-6);
        expect(rounded - given).toBeLessThanOrEqual(15);
      }),
    );
  });
});
