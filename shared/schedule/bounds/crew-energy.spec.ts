import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { Phase, PlanInput } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { cure, inputWith, work, workdays } from '../spec-input.js';
import { crewEnergy } from './crew-energy.js';
import { sumOfFinishes } from './sum-of-finishes.js';

const jobs = (count: number) => Array.from({ length: count }, (_, i) => ({ id: `j${i}`, priority: 0 }));
const ids = (count: number) => jobs(count).map(({ id }) => id);
const on = (job: number, slots: number, part: Partial<Phase> = {}): Phase =>
  work(`${job}-${slots}`, slots, { jobId: `j${job}`, ...part });
/** The end of so much work on workdays of 32 slots that begin at slot 28 of each day. */
const after = (slots: number): number => Math.floor((slots - 1) / 32) * 96 + 28 + ((slots - 1) % 32) + 1;

describe('the energy of crews', () => {
  test('lets the job that needs least be first, and all of them take as long as all their work', () => {
    const input = inputWith({ jobs: jobs(3), phases: [on(0, 40), on(1, 8), on(2, 20)] });
    expect(crewEnergy(input, ids(3))).toEqual([after(8), after(28), after(68)]);
  });

  test('is reached by the plan that takes the shortest first', () => {
    const input = inputWith({ jobs: jobs(3), phases: [on(0, 40), on(1, 8), on(2, 20)] });
    const made = plan({ ...input, order: ['1-8', '2-20', '0-40'] });
    expect(made.jobs.map(({ finish }) => finish!).sort((a, b) => a - b)).toEqual(crewEnergy(input, ids(3)));
  });

  test('counts two crews twice, and work that only one of them can do once more by itself', () => {
    const crews = [
      { id: 'first', trades: ['mason'], calendarId: 'workdays' },
      { id: 'second', trades: ['mason'], calendarId: 'workdays' },
    ];
    const phases = [on(0, 32), on(1, 32)];
    const two = inputWith({ jobs: jobs(2), crews, phases });
    expect(crewEnergy(two, ids(2))).toEqual([after(16), after(32)]);
    const bound = phases.map((phase) => ({ ...phase, crewId: 'first' }));
    expect(crewEnergy({ ...two, phases: bound }, ids(2))).toEqual([after(32), after(64)]);
  });

  test('leaves out what need not fit: cures, pins, started work, what nobody can do, jobs not asked for', () => {
    const input = inputWith({
      jobs: jobs(5),
      phases: [
        cure('cure', 99, { jobId: 'j0', trade: 'mason' }),
        on(1, 50, { facts: { pinnedStart: slot(0) } }),
        on(2, 51, { facts: { actualStart: slot(0) } }),
        on(3, 52, { trade: 'cable' }),
        on(4, 53),
        work('free', 54, { jobId: 'j0', trade: undefined }),
      ],
    });
    expect(crewEnergy(input, ids(4))).toEqual([0, 0, 0, 0]);
    expect(crewEnergy(input, ids(5)).at(-1)).toBe(after(53));
    expect(crewEnergy(input, ids(5), ({ id }) => id !== '4-53').at(-1)).toBe(0);
  });

  test('counts from now on, and ends with the horizon', () => {
    const calendars = [{ id: 'workdays', open: workdays(2) }];
    const input = inputWith({ now: slot(44), horizon: 192, calendars, jobs: jobs(1), phases: [on(0, 20)] });
    expect(crewEnergy(input, ['j0'])).toEqual([96 + 28 + 4]);
    expect(crewEnergy({ ...input, phases: [on(0, 60)] }, ['j0'])).toEqual([192]);
  });
});

test('sorted finishes keep the greater of both bounds at every place, and nothing counts before now', () => {
  const slots = (...list: number[]) => list.map(slot);
  expect(sumOfFinishes(slots(30, 5), slots(10, 20), slot(0))).toBe(10 + 30);
  expect(sumOfFinishes(slots(30, 5), slots(10, 50), slot(8))).toBe(2 + 42);
  expect(sumOfFinishes(slots(-4), slots(-9), slot(0))).toBe(0);
  expect(sumOfFinishes([], [], slot(0))).toBe(0);
});

describe('any company', () => {
  const company: fc.Arbitrary<PlanInput> = fc
    .record({
      crews: fc.array(fc.subarray(['mason', 'cable'], { minLength: 1 }), { minLength: 1, maxLength: 3 }),
      phases: fc.array(
        fc.record({
          job: fc.integer({ min: 0, max: 3 }),
          slots: fc.integer({ min: 1, max: 60 }),
          trade: fc.constantFrom('mason', 'cable'),
          continuous: fc.boolean(),
        }),
        { minLength: 4, maxLength: 10 },
      ),
      order: fc.infiniteStream(fc.integer({ min: 0, max: 1000 })).map((s) => [...s.take(10)]),
      now: fc.integer({ min: 0, max: 90 }),
    })
    .map(({ crews, phases, order, now }) =>
      inputWith({
        now: slot(now),
        jobs: jobs(4),
        crews: crews.map((trades, i) => ({ id: `c${i}`, trades, calendarId: 'workdays' })),
        weather: [
          {
            id: 'site',
            holds: [{ from: slot(40), to: slot(50), cause: { kind: 'called', holdId: 'h', text: '' } }],
          },
        ],
        phases: phases.map(({ job, slots, trade, continuous }, i) =>
          work(`p${i}`, continuous ? Math.min(slots, 32) : slots, {
            jobId: `j${job}`,
            trade,
            weatherIds: ['site'],
            duration: continuous
              ? { kind: 'work', slots: Math.min(slots, 32), mode: 'continuous' }
              : { kind: 'work', slots, mode: 'interruptible' },
          }),
        ),
        order: phases
          .map((_, i) => `p${i}`)
          .sort((a, b) => order[Number(a.slice(1))]! - order[Number(b.slice(1))]!),
      }),
    );

  test('finishes no job sooner than the bound says, whatever the order', () => {
    fc.assert(
      fc.property(company, (input) => {
        const made = plan(input);
        fc.pre(made.jobs.every(({ complete }) => complete));
        const finishing = made.jobs.filter(({ finish }) => finish !== null);
        const inTurn = crewEnergy(
          input,
          finishing.map(({ id }) => id),
        );
        const finishes = finishing.map(({ finish }) => finish!).sort((a, b) => a - b);
        finishes.forEach((finish, k) => expect(finish).toBeGreaterThanOrEqual(inTurn[k]!));
      }),
      { numRuns: 200 },
    );
  });
});
