import { describe, expect, it } from '@jest/globals';
import { daysFrom } from '../../time/zone-days.js';
import { makeAxis } from './axis.js';
import { dayHeads } from './day-heads.js';
import { WHOLE } from './window.js';

/* Monday 30 December 2030 and 55 days more (ISO 8601: 1 January 2031 is a Wednesday). */
const days = daysFrom('2030-12-30', 56, 'America/New_York');
const heads = (dayWidth: number, drawn = WHOLE.days) => dayHeads(makeAxis(days, dayWidth), drawn);

describe('the heads of the columns', () => {
  it('are of days where there is room', () => {
    expect(heads(80)).toHaveLength(56);
    expect(heads(80)[3]).toMatchObject({ of: 'day', left: 240, width: 80, days: 1 });
  });

  it('are of weeks, from Monday on, where days are narrow', () => {
    expect(
      heads(13)
        .map(({ of, day, days: count }) => [of, day.date, count])
        .slice(0, 2),
    ).toEqual([
      ['week', '2030-12-30', 7],
      ['week', '2031-01-06', 7],
    ]);
  });

  it('are of months where weeks are narrow, the first and last cut by the sheet', () => {
    expect(heads(3).map(({ of, day, days: count }) => [of, day.date, count])).toEqual([
      ['month', '2030-12-30', 2],
      ['month', '2031-01-01', 31],
      ['month', '2031-02-01', 23],
    ]);
  });

  it('are left out beyond what is drawn', () => {
    expect(heads(80, { from: 160, to: 320 }).map(({ left }) => left)).toEqual([160, 240]);
  });
});
