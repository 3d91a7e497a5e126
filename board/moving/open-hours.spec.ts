import { describe, expect, it } from '@jest/globals';
import { cure, inputWith, work, workdays } from '../../shared/schedule/spec-input.js';
import { openHours } from './open-hours.js';

const input = inputWith({
  calendars: [
    { id: 'workdays', open: workdays(5) },
    { id: 'late', open: workdays(2) },
    { id: 'curing', open: workdays(1) },
  ],
  crews: [
    { id: 'masons', trades: ['mason'], calendarId: 'workdays' },
    { id: 'lates', trades: ['mason'], calendarId: 'late' },
  ],
  phases: [
    work('any', 8),
    work('own', 8, { crewId: 'lates' }),
    cure('wait', 8),
    cure('watched', 8, { calendarId: 'curing' }),
    work('nobody', 8, { trade: 'electrician' }),
  ],
});

describe('the open hours that a phase is stepped through', () => {
  it.each([
    ['any', 5],
    ['own', 2],
    ['watched', 1],
    ['wait', null],
    ['nobody', null],
    ['gone', null],
  ])('of "%s"', (id, days) => {
    expect(openHours(input, id)?.length ?? null).toBe(days);
  });
});
