import { describe, expect, it } from '@jest/globals';
import { slot } from '../../shared/schedule/slot.js';
import { workdays } from '../../shared/schedule/spec-input.js';
import { stepFrom, stepOfKey } from './steps.js';

/* Days of 96 slots of a quarter of an hour, open from slot 28 (07:00) to 60 (15:00). */
const open = workdays(5);
const bounds = { now: slot(10), horizon: 96 * 5, slotsOfDay: 96 };
const from = (
  at: number,
  step: 'slot' | 'day' | 'week',
  direction: 1 | -1,
  hours: typeof open | null = open,
) => stepFrom(slot(at), step, direction, hours, bounds);

describe('a step of a phase that is picked up', () => {
  it('goes to the next open slot, over the night too', () => {
    expect(from(28, 'slot', 1)).toBe(29);
    expect(from(59, 'slot', 1)).toBe(96 + 28);
    expect(from(96 + 28, 'slot', -1)).toBe(59);
    expect(from(40, 'slot', -1)).toBe(39);
  });

  it('goes by the clock where no hours are kept, as a cure does', () => {
    expect(from(59, 'slot', 1, null)).toBe(60);
  });

  it('keeps the time of day when it goes by a day or a week', () => {
    expect(from(30, 'day', 1)).toBe(96 + 30);
    expect(from(96 + 30, 'day', -1)).toBe(30);
    expect(stepFrom(slot(30), 'week', 1, open, { ...bounds, horizon: 96 * 30 })).toBe(7 * 96 + 30);
  });

  it('stays between the present and the end of what is planned', () => {
    expect(from(30, 'week', -1)).toBe(10);
    expect(from(30, 'week', 1)).toBe(96 * 5 - 1);
    expect(from(28, 'slot', -1)).toBe(27);
  });
});

describe('a key', () => {
  it.each([
    ['ArrowRight', false, { step: 'slot', direction: 1 }],
    ['ArrowLeft', true, { step: 'day', direction: -1 }],
    ['PageDown', false, { step: 'week', direction: 1 }],
    ['PageUp', false, { step: 'week', direction: -1 }],
    ['ArrowUp', false, null],
    ['x', false, null],
  ] as const)('%s, with shift: %s', (key, shift, step) => {
    expect(stepOfKey(key, shift)).toEqual(step);
  });
});
