import { describe, expect, test } from '@jest/globals';
import type { Conflict, Plan, PlanInput } from './model.js';
import { plan } from './plan.js';
import { slot } from './slot.js';
import { cure, inputWith, link, pour, work, workdays } from './spec-input.js';
import { verify } from './verify/verify.js';

const horizon = 96 * 2;
const base = { horizon, calendars: [{ id: 'workdays', open: workdays(2) }] };

function planned(input: PlanInput): Plan {
  const made = plan(input);
  expect(verify(input, made)).toEqual([]);
  return made;
}

const codes = (conflicts: readonly Conflict[]): string[] => conflicts.map(({ code }) => code).sort();

describe('a pin with too little time after it', () => {
  test.each([
    ['of open hours', work('lay', 8, { facts: { pinnedStart: slot(96 + 56) } })],
    ['of the horizon', pour('lay', 8, { facts: { pinnedStart: slot(horizon - 4) } })],
    ['of anything, beyond the horizon', work('lay', 8, { facts: { pinnedStart: slot(horizon + 40) } })],
  ])('%s leaves the phase without a place, and both are said', (_what, phase) => {
    const made = planned(inputWith({ ...base, phases: [phase, cure('cure', 8)] }));
    expect(made.phases.find(({ id }) => id === 'lay')).toMatchObject({ state: 'unplanned', start: null });
    expect(codes(made.conflicts)).toEqual(['beyondHorizon', 'pinMoved']);
  });

  test('keeps nobody else from the crew', () => {
    const phases = [work('lay', 8, { facts: { pinnedStart: slot(96 + 56) } }), work('last', 60)];
    const made = planned(inputWith({ ...base, phases }));
    expect(made.phases.find(({ id }) => id === 'last')).toMatchObject({ start: 28, finish: 96 + 56 });
  });
});

test('a pin that a lag beyond all hours would never let start is kept, and said to come too soon', () => {
  const made = planned(
    inputWith({
      ...base,
      phases: [work('dig', 4), work('lay', 4, { facts: { pinnedStart: slot(96 + 30) } })],
      links: [link('dig', 'lay', 'FS', 200, 'working')],
    }),
  );
  expect(made.phases.find(({ id }) => id === 'lay')).toMatchObject({ start: 96 + 30, fixedBy: 'pin' });
  expect(made.conflicts).toEqual([
    {
      code: 'pinBeforePredecessor',
      phaseId: 'lay',
      pin: 96 + 30,
      earliest: horizon + 1,
      cause: { kind: 'calendar', calendarId: 'workdays', until: horizon },
    },
  ]);
});

test('a pin goes to the crew that is free, and is moved where all are taken by work under way', () => {
  const under = (crewId: string) => ({ facts: { actualStart: slot(28), crewId, remaining: 20 } });
  const crews = ['a', 'b'].map((id) => ({ id, trades: ['mason'], calendarId: 'workdays' }));
  const pin = work('lay', 4, { facts: { pinnedStart: slot(32) } });
  const one = planned(
    inputWith({ ...base, now: slot(30), crews, phases: [work('dig', 20, under('a')), pin] }),
  );
  expect(one.phases.find(({ id }) => id === 'lay')).toMatchObject({ start: 32, crewId: 'b' });
  const both = planned(
    inputWith({
      ...base,
      now: slot(30),
      crews,
      phases: [work('dig', 20, under('a')), work('fill', 20, under('b')), pin],
    }),
  );
  expect(both.phases.find(({ id }) => id === 'lay')).toMatchObject({ start: 50 });
  expect(both.conflicts).toMatchObject([{ code: 'pinMoved', pin: 32, start: 50, cause: { kind: 'crew' } }]);
});
