import { describe, expect, it } from '@jest/globals';
import { weekInput, workWeek } from './week-input.js';

describe('weekly hours', () => {
  it('are those of the ticked days', () => {
    expect(weekInput({ mon: 'yes', tue: '', sat: 'yes', from: '07:30', to: '16:00' })).toEqual([
      { day: 'mon', hours: [{ from: '07:30', to: '16:00' }] },
      { day: 'sat', hours: [{ from: '07:30', to: '16:00' }] },
    ]);
  });

  it('run from Monday to Friday where nothing else is said', () => {
    expect(weekInput(workWeek('08:00', '17:00')).map(({ day }) => day)).toEqual([
      'mon',
      'tue',
      'wed',
      'thu',
      'fri',
    ]);
  });
});
