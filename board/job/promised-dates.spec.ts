import { describe, expect, it } from '@jest/globals';
import { promisedDates } from './promised-dates.js';

const phase = (name: string, position: number, from: string | null, to = '', more: object = {}) => ({
  name,
  position,
  state: 'waiting' as const,
  planned:
    from === null
      ? null
      : { startAt: from, finishAt: to, weatherUnknown: false, crew: null, reason: { text: '' }, ...more },
  commitment: null,
});
const DIG = phase('Dig', 1, '2031-01-06T12:30:00Z', '2031-01-07T21:00:00Z');
const POUR = phase('Pour', 2, '2031-01-09T12:30:00Z', '2031-01-09T21:00:00Z', { weatherUnknown: true });

describe('what committing a job would promise', () => {
  it('is the stretch from its first start to its last end', () => {
    expect(promisedDates({ dueAt: null, phases: [POUR, DIG] })).toEqual({
      phases: 2,
      from: Date.parse('2031-01-06T12:30:00Z'),
      to: Date.parse('2031-01-09T21:00:00Z'),
      unplanned: [],
      weatherUnknown: 1,
      daysLate: 0,
    });
  });

  it('is nothing for work that has begun, is done, or is promised already', () => {
    const held = { id: 'c', startAt: '', finishAt: '', state: 'held' as const };
    expect(
      promisedDates({
        dueAt: null,
        phases: [
          { ...DIG, state: 'started' },
          { ...POUR, commitment: held },
          { ...DIG, state: 'dropped' },
        ],
      }),
    ).toBeNull();
  });

  it('has no stretch while a phase has no place in the plan, and names it', () => {
    const told = promisedDates({ dueAt: '2031-01-01T00:00:00Z', phases: [phase('Hookup', 3, null), DIG] });
    expect(told).toMatchObject({ phases: 2, from: null, to: null, unplanned: ['Hookup'], daysLate: 0 });
  });

  it.each([
    ['2031-01-09T21:00:00Z', 0],
    ['2031-01-09T20:59:00Z', 1],
    ['2031-01-08T21:00:00Z', 1],
    ['2031-01-08T20:00:00Z', 2],
  ])('against a promised end of %s is %d days late', (dueAt, daysLate) => {
    expect(promisedDates({ dueAt, phases: [DIG, POUR] })?.daysLate).toBe(daysLate);
  });
});
