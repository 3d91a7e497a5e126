import { describe, expect, test } from '@jest/globals';
import type { Gate, PlanInput } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { inputWith, link, pour, work, workdays } from '../spec-input.js';
import { faults, silent, withPhase, withVisits } from './broken-plan.js';

const shared = { id: 'footing', jobId: 'job', after: ['form'], notice: 0, noticeIn: 'elapsed' } as const;

/** Forms, a visit that is valid for a while, and a pour that cannot come before `opens`. */
const inspected = (validFor: number | undefined, opens: number): PlanInput =>
  inputWith({
    calendars: [
      { id: 'workdays', open: workdays(30) },
      { id: 'visits', open: workdays(1) },
    ],
    inspections: [{ ...shared, calendarId: 'visits', visit: 4, state: { kind: 'open' }, validFor }],
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

describe('a visit that is no longer valid', () => {
  const input = inspected(96, 96 * 3 + 28);
  const lapsed = plan(input);

  test('is told of when no other can be had', () => {
    expect(lapsed.conflicts.map(({ code }) => code)).toEqual(['inspectionLapsed']);
    expect(faults(input, lapsed)).toEqual([]);
  });

  test('is found out when nobody says so', () => {
    expect(faults(input, silent(lapsed))).toEqual([
      'gate pour: footing is no longer valid and nobody says so',
    ]);
  });

  test('is none while the time lasts, or without one', () => {
    const long = inspected(96 * 4, 96 * 3 + 28);
    expect(faults(long, silent(plan(long)))).toEqual([]);
    const endless = inspected(undefined, 96 * 3 + 28);
    expect(faults(endless, silent(plan(endless)))).toEqual([]);
  });
});

test('a pour that is placed though its visit is not is found out', () => {
  const input = inspected(undefined, 0);
  const sound = plan(input);
  expect(faults(input, sound)).toEqual([]);
  expect(faults(input, withVisits(sound, { start: null, finish: null }))).toEqual([
    'gate pour: footing has no date and nobody says so',
  ]);
});

describe.each<[string, Gate]>([
  ['a clearance', { kind: 'clearance', id: 'gate', earliest: slot(200) }],
  ['a cure', { kind: 'cure', id: 'gate', expected: slot(200) }],
  ['a plain earliest start', { kind: 'notBefore', id: 'gate', at: slot(200), cause: 'forecast' }],
])('%s', (_name, gate) => {
  const free = inputWith({ phases: [work('dig', 4)] });
  const gated = inputWith({ phases: [work('dig', 4, { gates: [gate] })] });

  test('keeps a phase back, and a start before it is found out', () => {
    expect(faults(gated, plan(gated))).toEqual([]);
    expect(faults(gated, plan(free))).toEqual(['gate dig: starts at 28, gate opens at 200']);
  });

  test('gives way to a person, who is told', () => {
    const phases = gated.phases.map((phase) => ({ ...phase, facts: { pinnedStart: slot(30) } }));
    const pinned = { ...gated, phases };
    expect(faults(pinned, plan(pinned))).toEqual([]);
    expect(faults(pinned, silent(plan(pinned)))).toEqual(['gate dig: starts at 30, gate opens at 200']);
  });
});

test('a date that is assumed is marked on the phase as well as told of', () => {
  const input = inputWith({
    phases: [work('dig', 4, { gates: [{ kind: 'clearance', id: 'mark-out', earliest: null }] })],
  });
  const sound = plan(input);
  const wrong = ['gate dig: mark-out has no date and nobody says so'];
  expect(faults(input, sound)).toEqual([]);
  expect(faults(input, withPhase(sound, 'dig', { assumes: [] }))).toEqual(wrong);
  expect(faults(input, silent(sound))).toEqual(wrong);
});
