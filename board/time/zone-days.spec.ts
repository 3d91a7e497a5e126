import { describe, expect, it } from '@jest/globals';
import { addDays, dateAt, daysBetween, daysFrom, isDate, momentAt, mondayOf } from './zone-days.js';

const HOUR = 3_600_000;
const ZONE = 'America/New_York';

describe('days of a zone', () => {
  it('are 23 and 25 hours long when the clocks change', () => {
    // 15 U.S.C. 260a: daylight time runs from the second Sunday of March to the first Sunday of November.
    const [spring] = daysFrom('2031-03-09', 1, ZONE);
    const [autumn] = daysFrom('2031-11-02', 1, ZONE);
    expect([spring, autumn].map((day) => ((day?.end ?? 0) - (day?.start ?? 0)) / HOUR)).toEqual([23, 25]);
  });

  it('follow each other without a gap', () => {
    const days = daysFrom('2031-03-03', 28, ZONE);
    expect(days).toHaveLength(28);
    days.slice(1).forEach((day, index) => expect(day.start).toBe(days[index]?.end));
    // ISO 8601: weekday 1 is Monday; 3 March 2031 is one.
    expect(days.map(({ weekday }) => weekday)).toEqual(
      Array.from({ length: 28 }, (_, index) => (index % 7) + 1),
    );
  });

  it('begin at midnight of the zone, not of the machine', () => {
    expect(dateAt(Date.parse('2031-01-13T04:59:59Z'), ZONE)).toBe('2031-01-12');
    expect(dateAt(Date.parse('2031-01-13T05:00:00Z'), ZONE)).toBe('2031-01-13');
    expect(momentAt('2031-01-13', 7, ZONE)).toBe(Date.parse('2031-01-13T12:00:00Z'));
  });
});

describe('dates', () => {
  it('know their Monday, over the turn of a year too', () => {
    // ISO 8601: 1 January 2031 is a Wednesday of week 1, which begins on 30 December.
    expect(mondayOf('2031-01-01')).toBe('2030-12-30');
    expect(mondayOf('2031-01-06')).toBe('2031-01-06');
    expect(mondayOf('2031-01-12')).toBe('2031-01-06');
  });

  it('move over months and leap days', () => {
    expect(addDays('2032-02-28', 1)).toBe('2032-02-29');
    expect(addDays('2031-03-01', -1)).toBe('2031-02-28');
  });

  it('are counted apart, over clock changes and the turn of a year', () => {
    expect(daysBetween('2031-03-01', '2031-04-01')).toBe(31);
    expect(daysBetween('2031-01-01', '2030-12-30')).toBe(-2);
    expect(daysBetween('2031-06-01', '2032-06-01')).toBe(366);
  });

  it.each([null, '', '2031-2-3', '2031-02-30', '2031-13-01', 'tomorrow'])(
    'does not take %s for a date',
    (text) => {
      expect(isDate(text)).toBe(false);
    },
  );

  it('takes a date for a date', () => {
    expect(isDate('2032-02-29')).toBe(true);
  });
});
