import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { HOUR_MS } from '../../units/time.js';
import { readDuration, readInterval } from './iso-interval.js';

// Forms by ISO 8601-1:2019, durations of days and of time.
describe('a duration', () => {
  it.each([
    ['PT1H', 1],
    ['PT6H', 6],
    ['P1D', 24],
    ['P1DT7H', 31],
    ['PT90M', 1.5],
    ['PT3600S', 1],
  ])('%s is %p hours', (text, hours) => {
    expect(readDuration(text)).toBe(hours * HOUR_MS);
  });

  it.each(['', 'P', 'PT', '6H', 'P1M', 'P1Y', 'PT6', 'PT-6H', 'PT1.5H'])('%p is refused', (text) => {
    expect(readDuration(text)).toBeNull();
  });

  it('is read as it was written, whatever its days and hours', () => {
    fc.assert(
      fc.property(fc.nat(20), fc.nat(47), (days, hours) => {
        expect(readDuration(`P${days}DT${hours}H`)).toBe((days * 24 + hours) * HOUR_MS);
      }),
    );
  });
});

describe('an interval', () => {
  it('begins at its start and lasts its duration, a clock change inside it or not', () => {
    // 1 November 2026, 01:00 in New York still by summer time: three hours on it is 03:00 by winter time.
    expect(readInterval('2026-11-01T01:00:00-04:00/PT3H')).toEqual({
      from: Date.parse('2026-11-01T05:00:00Z'),
      to: Date.parse('2026-11-01T08:00:00Z'),
    });
  });

  it.each([
    '2026-01-14T06:00:00/PT3H',
    '2026-02-30T06:00:00Z/PT3H',
    '2026-01-14T06:00:00Z',
    '2026-01-14T06:00:00Z/PT0H',
    '2026-01-14T06:00:00Z/PT3H/PT3H',
  ])('%p is refused', (text) => {
    expect(readInterval(text)).toBeNull();
  });
});
