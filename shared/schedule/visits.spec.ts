import { describe, expect, test } from '@jest/globals';
import type { Inspection, Plan, PlanInput } from './model.js';
import { plan } from './plan.js';
import { slot } from './slot.js';
import { inputWith, link, pour, work } from './spec-input.js';
import { verify } from './verify/verify.js';

/* Forms of a quarter day, a visit, and a pour that waits for it. */
const inspected = (part: Partial<Inspection>, opens = 0): PlanInput =>
  inputWith({
    inspections: [
      {
        id: 'footing',
        jobId: 'job',
        after: ['form'],
        notice: 0,
        noticeIn: 'elapsed',
        calendarId: 'workdays',
        visit: 4,
        state: { kind: 'open' },
        ...part,
      },
    ],
    phases: [
      work('form', 8),
      pour('pour', 4, {
        gates: [
          { kind: 'inspection', inspectionId: 'footing' },
          { kind: 'notBefore', id: 'concrete', at: slot(opens), cause: 'delivery' },
        ],
      }),
    ],
    links: [link('form', 'pour')],
  });

function planned(input: PlanInput): Plan {
  const made = plan(input);
  expect(verify(input, made)).toEqual([]);
  return made;
}

describe('a notice in visiting hours', () => {
  test('passes the night, and the last moment to ask is as many visiting hours before', () => {
    const [visit] = planned(inspected({ notice: 40, noticeIn: 'working' })).inspections;
    expect(visit).toMatchObject({ start: 96 + 36, latestRequest: 28, reason: { kind: 'notice', from: 0 } });
  });

  test('that is longer than all visiting hours leaves the visit and what waits for it without a place', () => {
    const made = planned(inspected({ notice: 32 * 30 + 1, noticeIn: 'working' }));
    expect(made.inspections).toMatchObject([
      { state: 'unplanned', ready: 36, start: null, reason: { kind: 'unplanned', phaseId: null } },
    ]);
    expect(made.phases.find(({ id }) => id === 'pour')).toMatchObject({
      state: 'unplanned',
      reason: { kind: 'unplanned', code: 'predecessorUnplanned', phaseId: null },
    });
  });
});

test('a visit longer than any visiting day has no place', () => {
  expect(planned(inspected({ visit: 33 })).inspections).toMatchObject([
    { state: 'unplanned', ready: 36, start: null, finish: null, latestRequest: null },
  ]);
});

test('a visit of no length may be made at the very end of visiting hours', () => {
  const closing = inspected({ visit: 0, notice: 60 });
  expect(planned(closing).inspections).toMatchObject([{ start: 60, finish: 60, latestRequest: 0 }]);
  const after = inspected({ visit: 0, notice: 61 });
  expect(planned(after).inspections).toMatchObject([{ start: 96 + 28, finish: 96 + 28 }]);
});

describe('a visit that would lose its validity before the pour', () => {
  const concrete = 96 * 3 + 40;
  const reason = { kind: 'validity', phaseId: 'pour' };

  test('is made later, and asked for later', () => {
    const made = planned(inspected({ validFor: 96, notice: 30 }, concrete));
    const start = concrete - 96 - 4;
    expect(made.inspections).toMatchObject([{ start, latestRequest: start - 30, reason }]);
    expect(made.conflicts).toEqual([]);
  });

  test('of no length likewise', () => {
    const made = planned(inspected({ visit: 0, validFor: 96 }, concrete));
    expect(made.inspections).toMatchObject([{ start: concrete - 96, finish: concrete - 96, reason }]);
  });

  test('that has been asked for is made later and nothing is left to ask', () => {
    const state = { kind: 'requested', at: slot(-10) } as const;
    const made = planned(inspected({ validFor: 96, state }, concrete));
    expect(made.inspections).toMatchObject([{ start: concrete - 100, latestRequest: null, reason }]);
  });

  test('stays where it is booked, with a conflict', () => {
    const state = { kind: 'booked', from: slot(40), to: slot(44) } as const;
    const made = planned(inspected({ validFor: 96, state }, concrete));
    expect(made.inspections).toMatchObject([{ state: 'booked', start: 40 }]);
    expect(made.conflicts).toMatchObject([{ code: 'inspectionLapsed', expires: 44 + 96, start: concrete }]);
  });
});
