import { describe, expect, test } from '@jest/globals';
import { applyChanges, type Change } from './change.js';
import type { PlanInput } from './model.js';
import { Pass } from './pass.js';
import { plan } from './plan.js';
import { Planner } from './planner.js';
import { slot } from './slot.js';
import { cure, inputWith, link, pour, work } from './spec-input.js';

const cause = { kind: 'called', holdId: 'wind', text: 'called by the foreman' } as const;
const hold = (from: number, to: number) => ({ from: slot(from), to: slot(to), cause });
const input = inputWith({
  jobs: [
    { id: 'job', priority: 0 },
    { id: 'later', priority: 1 },
  ],
  weather: [
    { id: 'north', holds: [hold(30, 40)] },
    { id: 'south', holds: [hold(50, 60)] },
  ],
  phases: [
    work('dig', 8, { weatherIds: ['north'] }),
    work('lay', 16, { weatherIds: ['south'] }),
    work('bed', 4, { jobId: 'later', weatherIds: ['north', 'south'] }),
  ],
  links: [link('dig', 'lay')],
});
const text = (value: unknown): string => JSON.stringify(value);

test('a plan placed anew over what is compiled is the same plan, and in another order it is that of the order', () => {
  const pass = new Pass(input);
  expect(text(pass.whole())).toBe(text(plan(input)));
  const order = ['bed', 'dig', 'lay'];
  const other = pass.whole(order);
  expect(text(other)).toBe(text(plan({ ...input, order })));
  expect(other.phases.find(({ id }) => id === 'bed')!.start).toBeLessThan(
    plan(input).phases.find(({ id }) => id === 'bed')!.start!,
  );
});

const changed: [string, (given: PlanInput) => PlanInput][] = [
  ['weather sets in another order', (given) => ({ ...given, weather: [...given.weather].reverse() })],
  ['phases in another order', (given) => ({ ...given, phases: [...given.phases].reverse() })],
  [
    'another weather set more',
    (given) => ({ ...given, weather: [...given.weather, { id: 'east', holds: [] }] }),
  ],
  ['another horizon', (given) => ({ ...given, horizon: 96 * 20 })],
  ['another present', (given) => ({ ...given, now: slot(40) })],
];
test.each(changed)('%s: a kept pass either plans it as new or says that it cannot', (_name, change) => {
  const next = change(input);
  const made = new Pass(input).to(next) ?? new Pass(next).plan;
  expect(text(made)).toBe(text(plan(next)));
});

test.each<[string, Change[]]>([
  ['weather that is replaced', [{ kind: 'weather', set: { id: 'north', holds: [hold(28, 50)] } }]],
  [
    'weather that is new',
    [
      { kind: 'weather', set: { id: 'west', holds: [hold(28, 50)] } },
      { kind: 'phase', phase: work('dig', 8, { weatherIds: ['west'] }) },
    ],
  ],
  ['a phase that is new', [{ kind: 'phase', phase: work('seal', 4) }]],
  ['work that has begun', [{ kind: 'phase', phase: work('dig', 8, { facts: { actualStart: slot(0) } }) }]],
])('a preview of %s is the plan of the changed input, and the planner stays as it is', (_name, changes) => {
  const planner = Planner.of(input);
  const before = text(planner.plan);
  const made = planner.preview(changes);
  expect(text(made)).toBe(text(plan(applyChanges(input, changes))));
  expect(text(made)).not.toBe(before);
  expect(text(planner.plan)).toBe(before);
  expect(planner.input).toBe(input);
});

test('a change that is applied is what the next goes on from', () => {
  const planner = Planner.of(input);
  planner.apply([{ kind: 'delay', phaseId: 'dig', slots: 4 }]);
  const twice = planner.apply([{ kind: 'delay', phaseId: 'dig', slots: 4 }]);
  expect(planner.input.phases[0]!.duration.slots).toBe(16);
  expect(text(twice)).toBe(text(plan(planner.input)));
});

test('a change that cannot be used is refused and leaves the plan', () => {
  const planner = Planner.of(input);
  const before = text(planner.plan);
  expect(() =>
    planner.apply([{ kind: 'phase', phase: work('dig', 0.5, { weatherIds: ['north'] }) }]),
  ).toThrow('whole number of slots');
  expect(text(planner.plan)).toBe(before);
  expect(text(planner.preview([]))).toBe(before);
});

describe('a preview beside what stands fast', () => {
  const same = (given: PlanInput, changes: Change[]) => {
    const planner = Planner.of(given);
    expect(text(planner.preview(changes))).toBe(text(plan(applyChanges(given, changes))));
    expect(text(planner.preview([]))).toBe(text(plan(given)));
  };

  test('of work that comes before another in its turn, after something that is over', () => {
    const facts = { actualStart: slot(0), actualFinish: slot(20), crewId: 'masons' };
    const given = inputWith({
      now: slot(24),
      jobs: [{ id: 'job', priority: 0 }],
      phases: [work('dig', 8, { facts }), work('a', 8), work('b', 9), work('c', 4)],
      links: [link('dig', 'c')],
    });
    same(given, [{ kind: 'delay', phaseId: 'a', slots: 6 }]);
    same(given, [{ kind: 'delay', phaseId: 'c', slots: 20 }]);
  });

  test('of what is lent before a promise that has equipment set aside', () => {
    const crews = ['a', 'b', 'c'].map((id) => ({ id, trades: ['mason'], calendarId: 'workdays' }));
    const hold = (poolId: string) => ({ poolId, quantity: 1 });
    const given = inputWith({
      freezeUntil: slot(96 * 2),
      crews,
      pools: [
        { id: 'blankets', quantity: 2 },
        { id: 'mixer', quantity: 2 },
      ],
      phases: [
        pour('first', 8, { crewId: 'a', holds: [hold('mixer'), hold('blankets')] }),
        pour('promised', 8, {
          crewId: 'a',
          holds: [hold('mixer'), hold('blankets')],
          commitment: { start: slot(96 + 28), finish: slot(96 + 36), crewId: 'a' },
        }),
        pour('beside', 8, { crewId: 'b', holds: [hold('mixer')] }),
        pour('last', 8, { crewId: 'c', holds: [hold('blankets'), { poolId: 'mixer', quantity: 2 }] }),
      ],
      links: [link('first', 'promised')],
    });
    same(given, [{ kind: 'delay', phaseId: 'first', slots: 3 }]);
    same(given, [{ kind: 'delay', phaseId: 'beside', slots: 3 }]);
    same(given, [{ kind: 'delay', phaseId: 'last', slots: 20 }]);
  });

  test('of what takes another turn at the equipment that work under way has', () => {
    const crews = ['a', 'b', 'c'].map((id) => ({ id, trades: ['mason'], calendarId: 'workdays' }));
    const hold = (untilPhaseId?: string) => [{ poolId: 'blankets', quantity: 1, untilPhaseId }];
    const given = inputWith({
      now: slot(30),
      crews,
      pools: [{ id: 'blankets', quantity: 3 }],
      phases: [
        pour('begun', 8, { facts: { actualStart: slot(28), crewId: 'a' }, holds: hold('strip') }),
        work('strip', 40, { crewId: 'a' }),
        pour('one', 8, { crewId: 'b', holds: hold() }),
        pour('two', 9, { crewId: 'c', holds: hold() }),
      ],
      links: [link('begun', 'strip')],
    });
    same(given, [{ kind: 'phase', phase: { ...given.phases[2]!, previous: { start: slot(20) } } }]);
    same(given, [{ kind: 'delay', phaseId: 'one', slots: 4 }]);
    // What gives back the blankets of work under way is settled with it, before everything else.
    same(given, [{ kind: 'delay', phaseId: 'strip', slots: 4 }]);
  });

  test('of what was settled on the way to something else, and comes back to its own turn', () => {
    const given = inputWith({
      pools: [{ id: 'blankets', quantity: 1 }],
      phases: [
        work('covered', 0, {
          trade: undefined,
          holds: [{ poolId: 'blankets', quantity: 1, untilPhaseId: 'strip' }],
        }),
        cure('strip', 1, { crewId: 'masons' }),
        cure('other', 2, { crewId: 'masons' }),
      ],
    });
    const planner = Planner.of(given);
    // While it is the longest, what is covered comes first and takes the stripping along.
    for (const slots of [2, 0, 2]) {
      const changes: Change[] = [{ kind: 'delay', phaseId: 'covered', slots }];
      expect(text(planner.preview(changes))).toBe(text(plan(applyChanges(given, changes))));
    }
  });
});
