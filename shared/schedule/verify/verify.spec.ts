import { describe, expect, test } from '@jest/globals';
import type { Plan, PlanInput, PlannedPhase } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { cure, inputWith, link, pour, work, workdays } from '../spec-input.js';
import { verify } from './verify.js';

/** One job that uses every rule, with a second crew and a competitor for the blankets. */
const input: PlanInput = inputWith({
  now: slot(10),
  freezeUntil: slot(70),
  crews: [
    { id: 'masons', trades: ['mason'], calendarId: 'workdays' },
    { id: 'others', trades: ['labour'], calendarId: 'workdays' },
  ],
  calendars: [
    { id: 'workdays', open: workdays(30) },
    { id: 'visits', open: workdays(30, 1) },
  ],
  pools: [{ id: 'blankets', quantity: 2 }],
  weather: [
    {
      id: 'site',
      holds: [
        {
          from: slot(96 * 3),
          to: slot(96 * 4),
          cause: { kind: 'limit', limitId: 'air', value: 20, hour: slot(96 * 3), text: 'below 40 °F' },
        },
      ],
    },
  ],
  inspections: [
    {
      id: 'footing',
      jobId: 'job',
      after: ['form'],
      notice: 96,
      noticeIn: 'elapsed',
      calendarId: 'visits',
      visit: 4,
      state: { kind: 'open' },
    },
  ],
  jobs: [
    { id: 'job', priority: 0, due: slot(200) },
    { id: 'other', priority: 1 },
  ],
  phases: [
    work('dig', 8, {
      facts: { actualStart: slot(0), actualFinish: slot(8), crewId: 'others' },
      trade: 'labour',
    }),
    work('form', 12, { commitment: { start: slot(40), finish: slot(52), crewId: 'masons' } }),
    pour('pour', 10, {
      gates: [
        { kind: 'inspection', inspectionId: 'footing' },
        { kind: 'clearance', id: 'mark-out', earliest: slot(100), expires: slot(150) },
        { kind: 'cure', id: 'sample', expected: null },
      ],
      holds: [{ poolId: 'blankets', quantity: 2, untilPhaseId: 'cure' }],
      weatherIds: ['site'],
    }),
    cure('cure', 100),
    work('block', 70, { weatherIds: ['site'] }),
    pour('slab', 6, { jobId: 'other', holds: [{ poolId: 'blankets', quantity: 1 }] }),
    work('clean', 4, { jobId: 'other', facts: { pinnedStart: slot(2) } }),
  ],
  links: [
    link('dig', 'form'),
    link('form', 'pour'),
    link('pour', 'cure'),
    link('cure', 'block', 'FS', 8, 'working'),
  ],
});

const sound = plan(input);

function withPhase(id: string, change: Partial<PlannedPhase>): Plan {
  return {
    ...sound,
    phases: sound.phases.map((phase) => (phase.id === id ? { ...phase, ...change } : phase)),
  };
}

function moved(id: string, by: number): Plan {
  const { start, finish, segments, trail } = sound.phases.find((phase) => phase.id === id)!;
  const shift = (t: number | null) => slot(t! + by);
  return withPhase(id, {
    start: shift(start),
    finish: shift(finish),
    segments: segments.map(({ from, to }) => ({ from: shift(from), to: shift(to) })),
    ready: shift(start),
    trail: trail.slice(0, 0),
  });
}

function startOf(id: string): number {
  return sound.phases.find((phase) => phase.id === id)!.start!;
}

function rulesBroken(broken: Plan): string[] {
  return [...new Set(verify(input, broken).map((one) => `${one.rule} ${one.subject}`))].sort();
}

function without(code: string): Plan {
  expect(sound.conflicts.map((conflict) => conflict.code)).toContain(code);
  return { ...sound, conflicts: sound.conflicts.filter((conflict) => conflict.code !== code) };
}

test('the plan itself is sound', () => {
  expect(verify(input, sound)).toEqual([]);
});

describe('a broken plan is found out', () => {
  test.each([
    ['a start before its predecessor', moved('cure', -1), 'link pour>cureFS'],
    ['a working lag cut short', moved('block', -5), 'link cure>blockFS'],
    ['work outside open hours', moved('pour', 40), 'hours pour'],
    ['work in a weather hold', moved('pour', 96 * 3 + 30 - startOf('pour')), 'hours pour'],
    [
      'work cut short',
      withPhase('slab', { finish: slot(sound.phases.find((p) => p.id === 'slab')!.finish! - 1) }),
      'hours slab',
    ],
    [
      'stretches out of order',
      withPhase('block', { segments: [...sound.phases.find((p) => p.id === 'block')!.segments].reverse() }),
      'hours block',
    ],
    [
      'a crew on two phases',
      moved('slab', 40 - sound.phases.find((p) => p.id === 'slab')!.start!),
      'crew masons',
    ],
    ['a crew of another trade', withPhase('slab', { crewId: 'others' }), 'crew slab'],
    ['no crew at all', withPhase('slab', { crewId: null }), 'crew slab'],
    ['a start before the present', moved('form', -36), 'facts form'],
    ['a commitment left in silence', moved('form', 2), 'facts form'],
    ['history rewritten', withPhase('dig', { finish: slot(9) }), 'facts dig'],
    ['a phase left out', { ...sound, phases: sound.phases.slice(1) }, 'facts block'],
    ['a phase without place or reason', withPhase('block', { start: null, finish: null }), 'facts block'],
    ['waits that do not add up', withPhase('block', { ready: slot(startOf('block') - 1) }), 'dates block'],
    [
      'a start before its gate',
      { ...moved('pour', 0), inspections: sound.inspections.map((v) => ({ ...v, finish: slot(400) })) },
      'gate pour',
    ],
    [
      'a visit before its work',
      { ...sound, inspections: sound.inspections.map((v) => ({ ...v, start: slot(50), finish: slot(54) })) },
      'visit footing',
    ],
    [
      'a visit without its notice',
      {
        ...sound,
        now: slot(0),
        inspections: sound.inspections.map((v) => ({ ...v, start: slot(60), finish: slot(64) })),
      },
      'visit footing',
    ],
    ['a visit left out', { ...sound, inspections: [] }, 'visit footing'],
    [
      'a job finish that is not its last phase',
      { ...sound, jobs: sound.jobs.map((job) => ({ ...job, finish: slot(1) })) },
      'dates job',
    ],
  ] as [string, Plan, string][])('%s', (_name, broken, expected) => {
    expect(rulesBroken(broken)).toContain(expected);
  });

  test('equipment lent twice', () => {
    const { start } = sound.phases.find((phase) => phase.id === 'cure')!;
    const at = 96 * Math.ceil(start! / 96) + 28;
    const slab = sound.phases.find((phase) => phase.id === 'slab')!;
    expect(rulesBroken(moved('slab', at - slab.start!))).toContain('stock blankets');
  });

  test.each([
    ['gateUndated', 'gate pour'],
    ['clearanceLapsed', 'gate pour'],
    ['dueMissed', 'dates job'],
    ['pinMoved', 'facts clean'],
  ])('a plan that keeps quiet about %s', (code, expected) => {
    const late = code === 'clearanceLapsed' ? lapsed() : { input, plan: without(code) };
    const rules = verify(late.input, late.plan).map((one) => `${one.rule} ${one.subject}`);
    expect(rules).toContain(expected);
  });
});

/** The same job with a mark-out that lapses before the pour, and a plan that does not say so. */
function lapsed(): { input: PlanInput; plan: Plan } {
  const phases = input.phases.map((phase) =>
    phase.id === 'pour'
      ? {
          ...phase,
          gates: [{ kind: 'clearance', id: 'mark-out', earliest: slot(20), expires: slot(30) } as const],
        }
      : phase,
  );
  const late = { ...input, phases };
  const made = plan(late);
  expect(made.conflicts.map(({ code }) => code)).toContain('clearanceLapsed');
  return { input: late, plan: { ...made, conflicts: [] } };
}
