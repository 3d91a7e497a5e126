import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { dayNumber, dayOf, isWeekend, putTogether, takeApart } from './local-time.js';
import { earliestDig, lastDay } from './mark-out-dates.js';
import { MARK_OUT_RULES, markOutRule } from './mark-out-rules.js';

const anyTime = fc
  .record({ day: fc.integer({ min: 18_000, max: 22_000 }), minutes: fc.integer({ min: 0, max: 1439 }) })
  .map(({ day, minutes }) => putTogether(day, minutes));

describe('days and times without a zone', () => {
  it('come back unchanged', () => {
    fc.assert(
      fc.property(anyTime, (time) => {
        const { day, minutes } = takeApart(time);
        expect(putTogether(day, minutes)).toBe(time);
        expect(dayNumber(dayOf(day))).toBe(day);
      }),
    );
  });

  it('know the days of the week', () => {
    // 2025-10-10 was a Friday.
    expect(
      ['2025-10-10', '2025-10-11', '2025-10-12', '2025-10-13'].map((day) => isWeekend(dayNumber(day))),
    ).toEqual([false, true, true, false]);
  });

  it.each(['2025-02-29', '2025-13-01', '10/10/2025', '', '2025-1-1'])('%p is no day', (day) => {
    expect(() => dayNumber(day)).toThrow('is no day of the calendar; write it as 2025-10-10');
  });

  it.each(['2025-10-10', '2025-10-10T24:00', '2025-10-10T10:60', '2025-10-10 10:00'])(
    '%p is no time',
    (time) => {
      expect(() => takeApart(time)).toThrow('is no time; write it as');
    },
  );
});

describe('notice before a dig', () => {
  it('by hours asked at a weekend begins with the next day that counts', () => {
    expect(earliestDig({ kind: 'hours', hours: 24 }, '2025-10-11T15:00', [])).toBe('2025-10-14T00:00');
  });

  it('by hours within a day stays in it', () => {
    expect(earliestDig({ kind: 'hours', hours: 3 }, '2025-10-08T10:00', [])).toBe('2025-10-08T13:00');
  });

  it('by hours over a weekend leaves it out', () => {
    expect(earliestDig({ kind: 'hours', hours: 48 }, '2025-10-10T10:00', [])).toBe('2025-10-14T10:00');
  });

  it('never ends on a weekend or a holiday, and a holiday never brings it forward', () => {
    const rule = fc.constantFrom(
      { kind: 'hours' as const, hours: 72 },
      { kind: 'nth-day' as const, days: 3 },
      { kind: 'full-days' as const, days: 2 },
    );
    fc.assert(
      fc.property(rule, anyTime, fc.integer({ min: 0, max: 7 }), (notice, asked, after) => {
        const holiday = dayOf(takeApart(asked).day + after);
        const plain = earliestDig(notice, asked, []);
        const kept = earliestDig(notice, asked, [holiday]);
        expect(kept >= plain).toBe(true);
        expect(kept > asked).toBe(true);
        expect(isWeekend(takeApart(kept).day)).toBe(false);
        expect(kept.slice(0, 10)).not.toBe(holiday);
      }),
    );
  });

  it('full days are one more than the day they end on', () => {
    expect(earliestDig({ kind: 'full-days', days: 2 }, '2025-10-06T08:00', [])).toBe('2025-10-09T00:00');
    expect(earliestDig({ kind: 'nth-day', days: 3 }, '2025-10-06T08:00', [])).toBe('2025-10-09T00:00');
  });
});

describe('life of a mark-out', () => {
  it('by the calendar runs over weekends and holidays', () => {
    expect(lastDay({ days: 5, counted: 'calendar' }, '2025-10-10T10:00', ['2025-10-13'])).toBe('2025-10-15');
  });

  it('by working days leaves them out', () => {
    expect(lastDay({ days: 1, counted: 'working' }, '2025-10-10T10:00', ['2025-10-13'])).toBe('2025-10-14');
  });
});

describe('the rules of the states', () => {
  it('stand once each, with source and date', () => {
    const states = MARK_OUT_RULES.map((rule) => rule.state);
    expect(new Set(states).size).toBe(states.length);
    for (const rule of MARK_OUT_RULES) {
      expect(rule.source.text).not.toBe('');
      expect(dayNumber(rule.asOf)).toBeGreaterThan(0);
    }
  });

  it('are not guessed where they are not known', () => {
    expect(() => markOutRule('ZZ')).toThrow('no mark-out rule is known for "ZZ"; ask its notice centre');
  });
});
