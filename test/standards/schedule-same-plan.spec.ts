import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import { applyChanges, type Change } from '../../shared/schedule/change.js';
import type { Phase, PlanInput, WeatherSet } from '../../shared/schedule/model.js';
import { plan } from '../../shared/schedule/plan.js';
import { Planner } from '../../shared/schedule/planner.js';
import { slot } from '../../shared/schedule/slot.js';
import { inputWith, work } from '../../shared/schedule/spec-input.js';
import { portfolio } from '../../bench/portfolio/portfolio.js';
import { arbitraryInput } from './schedule-arbitrary-input.js';

/* A plan made anew from nothing is the judge of every plan that was gone on with. */

/** fast-check prints the seed and the shrunken input of a failure; set FC_SEED to replay it. */
const seed = process.env['FC_SEED'];
const runs = (numRuns: number) => ({ numRuns, ...(seed === undefined ? {} : { seed: Number(seed) }) });

/** What a change is drawn from: which phase, which kind, how much. */
const drawn = fc.record({ which: fc.nat(1000), kind: fc.nat(7), amount: fc.nat(60), later: fc.nat(120) });

function changeOf(
  input: PlanInput,
  { which, kind, amount, later }: { which: number; kind: number; amount: number; later: number },
): Change {
  const phase = input.phases[which % input.phases.length]!;
  const set = input.weather[which % input.weather.length]!;
  const { facts = {} } = phase;
  switch (kind) {
    case 0:
    case 1:
      return { kind: 'delay', phaseId: phase.id, slots: amount % 12 };
    case 2:
      return { kind: 'delay', phaseId: phase.id, slots: -(amount % 12) };
    case 3:
      return { kind: 'phase', phase: { ...phase, facts: { ...facts, pinnedStart: slot(later) } } };
    case 4:
      return { kind: 'phase', phase: { ...phase, facts: { ...facts, pinnedStart: undefined } } };
    case 5:
      return { kind: 'weather', set: longer(set, amount, later) };
    case 6:
      return { kind: 'phase', phase: { ...phase, previous: { start: slot(later) } } };
    default:
      return { kind: 'closed', from: slot(later), to: slot(later + amount) };
  }
}

function longer(set: WeatherSet, amount: number, from: number): WeatherSet {
  const cause = { kind: 'limit', limitId: 'air', value: 30, hour: slot(from), text: 'below 40 °F' } as const;
  return { ...set, holds: [...set.holds.slice(1), { from: slot(from), to: slot(from + 1 + amount), cause }] };
}

test.each([
  ['as they are planned first', arbitraryInput({ cycles: false, facts: false })],
  ['with facts, pins and commitments', arbitraryInput({ cycles: false, facts: true })],
  ['with greatest lags', arbitraryInput({ cycles: false, facts: false, most: true })],
  ['with everything, cycles as well', arbitraryInput({ cycles: true, facts: true, most: true })],
])('previews of any inputs %s are the plan of the changed input, byte for byte', (_name, inputs) => {
  fc.assert(
    fc.property(inputs, fc.array(drawn, { minLength: 1, maxLength: 5 }), (input, draws) => {
      const planner = Planner.of(input);
      const first = JSON.stringify(planner.plan);
      for (const draw of draws) {
        const changes = [changeOf(input, draw)];
        expect(JSON.stringify(planner.preview(changes))).toBe(
          JSON.stringify(plan(applyChanges(input, changes))),
        );
        expect(JSON.stringify(planner.plan)).toBe(first);
      }
      const all = draws.map((draw) => changeOf(input, draw));
      expect(JSON.stringify(planner.preview(all))).toBe(JSON.stringify(plan(applyChanges(input, all))));
    }),
    runs(400),
  );
});

test('a phase that has lost its crew to what was only tried there gets it back', () => {
  const days = Array.from({ length: 40 }, (_, i) => ({ from: slot(7 * i + 1), to: slot(7 * i + 7) }));
  const hours = Array.from({ length: 140 }, (_, i) => ({ from: slot(2 * i + 1), to: slot(2 * i + 2) }));
  const held = (id: string, slots: number, quantity: number, until?: string): Phase => ({
    id,
    jobId: 'a',
    duration: { kind: 'work', slots, mode: 'interruptible' },
    holds: [{ poolId: 'blankets', quantity, untilPhaseId: until }],
  });
  const input = inputWith({
    horizon: 280,
    now: slot(2),
    calendars: [
      { id: 'days', open: days },
      { id: 'visits', open: hours },
    ],
    crews: [{ id: 'c', trades: ['mason'], calendarId: 'days' }],
    pools: [{ id: 'blankets', quantity: 3 }],
    weather: [{ id: 'frost', holds: [] }],
    inspections: [
      {
        id: 'visit',
        jobId: 'a',
        after: [],
        notice: 0,
        noticeIn: 'working',
        calendarId: 'visits',
        visit: 1,
        state: { kind: 'booked', from: slot(4), to: slot(8) },
      },
    ],
    jobs: [
      { id: 'a', priority: 0, due: slot(20) },
      { id: 'b', priority: 0 },
    ],
    phases: [
      work('b-walk', 6, { jobId: 'b' }),
      work('b-seal', 1, { jobId: 'b', weatherIds: ['frost'] }),
      { ...held('a-pour', 1, 1, 'a-wait'), trade: 'mason' },
      held('a-wait', 0, 1, 'a-strip'),
      { ...held('a-strip', 1, 3), gates: [{ kind: 'inspection', inspectionId: 'visit' }] },
    ],
  });
  const cause = { kind: 'limit', limitId: 'air', value: 30, hour: slot(0), text: 'below 40 °F' } as const;
  const changes: Change[] = [
    { kind: 'weather', set: { id: 'frost', holds: [{ from: slot(0), to: slot(1), cause }] } },
    { kind: 'delay', phaseId: 'a-wait', slots: 0 },
  ];
  const planner = Planner.of(input);
  for (const change of changes) {
    expect(JSON.stringify(planner.preview([change]))).toBe(
      JSON.stringify(plan(applyChanges(input, [change]))),
    );
  }
});

test('changes of a portfolio that go on from each other keep to the plan made anew', () => {
  const first = portfolio(24);
  const places = new Map(plan(first).phases.map((phase) => [phase.id, phase]));
  const input: PlanInput = {
    ...first,
    phases: first.phases.map((phase) => {
      const { start, crewId } = places.get(phase.id)!;
      return { ...phase, previous: { start: start!, crewId: crewId ?? undefined } };
    }),
  };
  fc.assert(
    fc.property(fc.array(drawn, { minLength: 2, maxLength: 6 }), (draws) => {
      const planner = Planner.of(input);
      for (const draw of draws) {
        const made = planner.apply([changeOf(planner.input, draw)]);
        expect(JSON.stringify(made)).toBe(JSON.stringify(plan(planner.input)));
      }
    }),
    runs(25),
  );
});
