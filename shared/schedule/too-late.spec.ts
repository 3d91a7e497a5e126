import { describe, expect, test } from '@jest/globals';
import type { Plan, PlanInput } from './model.js';
import { plan } from './plan.js';
import { slot } from './slot.js';
import { inputWith, link, work, workdays } from './spec-input.js';
import { verify } from './verify/verify.js';

function planned(input: PlanInput): Plan {
  const made = plan(input);
  expect(verify(input, made)).toEqual([]);
  return made;
}

const two = ['a', 'b'].map((id) => ({ id, trades: ['mason'], calendarId: 'workdays' }));
const hold = (at: number) => ({ kind: 'notBefore', id: 'hold', at: slot(at), cause: 'holdPoint' }) as const;

describe('what must follow soon', () => {
  const follows = (mostLag: number, horizon = 30): PlanInput =>
    inputWith({
      horizon: 96 * horizon,
      calendars: [{ id: 'workdays', open: workdays(horizon) }],
      crews: two,
      phases: [work('mix', 4), work('lay', 4, { gates: [hold(96 + 38)] })],
      links: [{ ...link('mix', 'lay', 'SS', Math.min(0, mostLag - 4), 'working'), mostLag }],
    });

  test('keeps back what it follows, so far and no further', () => {
    const made = planned(follows(6));
    expect(made.conflicts).toEqual([]);
    expect(made.phases.map(({ id, start }) => [id, start])).toEqual([
      ['lay', 96 + 38],
      ['mix', 96 + 32],
    ]);
  });

  test('and is to come even before it keeps it back until after', () => {
    const made = planned(follows(-6));
    expect(made.conflicts).toEqual([]);
    expect(made.phases.map(({ id, start }) => [id, start])).toEqual([
      ['lay', 96 + 38],
      ['mix', 96 + 44],
    ]);
  });

  test('is not waited for when no hours are left to wait: the first goes ahead, with a conflict', () => {
    const made = planned(follows(-30, 2));
    expect(made.phases.map(({ id, start }) => [id, start])).toEqual([
      ['lay', 96 + 38],
      ['mix', 28],
    ]);
    expect(made.conflicts).toMatchObject([{ code: 'lagExceeded', by: 42 + 30 }]);
  });
});
