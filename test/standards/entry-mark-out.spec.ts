import { describe, expect, it } from '@jest/globals';
import { earliestDig, lastDay } from '../../shared/entry/mark-out/mark-out-dates.js';
import { markOutRule } from '../../shared/entry/mark-out/mark-out-rules.js';

const ASKED = '2025-10-10T10:00';
const HOLIDAYS = ['2025-10-13'];

// Rules published (MGL 82 §40A, ORC 3781.28, NJAC 14:2-3.1; two full days as stated), dates computed by hand.
describe('asked on a Friday at ten before a Monday that is a holiday, digging may begin', () => {
  it.each([
    ['MA', '2025-10-16T10:00'],
    ['OH', '2025-10-15T10:00'],
    ['NJ', '2025-10-16T00:00'],
    ['AL', '2025-10-16T00:00'],
    ['IL', '2025-10-16T00:00'],
  ])('in %s from %p', (state, from) => {
    expect(earliestDig(markOutRule(state).notice!, ASKED, HOLIDAYS)).toBe(from);
  });
});

// Lives published as stated; dates computed by hand, with no holiday but the one above.
describe('a mark-out asked for on 2025-10-10 is good', () => {
  it.each([
    ['NJ', { days: 45, counted: 'working' }, '2025-12-15'],
    ['AL', { days: 20, counted: 'working' }, '2025-11-10'],
    ['IL', { days: 25, counted: 'calendar' }, '2025-11-04'],
    ['CT', { days: 30, counted: 'calendar' }, '2025-11-09'],
  ])('in %s for %p, until %p', (state, life, until) => {
    expect(markOutRule(state).life).toEqual(life);
    expect(lastDay(markOutRule(state).life!, ASKED, HOLIDAYS)).toBe(until);
  });
});
