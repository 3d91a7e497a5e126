import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { DEFAULT_WEIGHTS, objectiveOf } from '../improve/objective.js';
import { objectiveBound } from '../improve/objective-bound.js';
import type { Phase, PlanInput } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { cure, inputWith, link, pour, work } from '../spec-input.js';
import { poolEnergy } from './pool-energy.js';

const jobs = (count: number) => Array.from({ length: count }, (_, i) => ({ id: `j${i}`, priority: 0 }));
const ids = (count: number) => jobs(count).map(({ id }) => id);
const blankets = [{ id: 'blankets', quantity: 1 }];
const holding = (quantity: number, untilPhaseId?: string): Pick<Phase, 'holds'> => ({
  holds: [{ poolId: 'blankets', quantity, untilPhaseId }],
});

describe('the energy of equipment', () => {
  test('lets the job that needs least be first, and all of them take as long as all they hold', () => {
    const input = inputWith({
      pools: blankets,
      jobs: jobs(3),
      phases: [40, 8, 20].map((slots, j) => cure(`c${j}`, slots, { jobId: `j${j}`, ...holding(1) })),
    });
    expect(poolEnergy(input, ids(3))).toEqual([8, 28, 68]);
    // Cures start at any hour, and the shortest first is best.
    const made = plan({ ...input, order: ['c1', 'c2', 'c0'] });
    expect(made.jobs.map(({ finish }) => finish!).sort((a, b) => a - b)).toEqual([8, 28, 68]);
  });

  test('holds quantity times time against the quantity there is, rounded up', () => {
    const input = inputWith({
      now: slot(5),
      pools: [{ id: 'blankets', quantity: 4 }],
      jobs: jobs(2),
      phases: [cure('a', 10, { jobId: 'j0', ...holding(3) }), cure('b', 9, { jobId: 'j1', ...holding(3) })],
    });
    expect(poolEnergy(input, ids(2))).toEqual([5 + Math.ceil(27 / 4), 5 + Math.ceil(57 / 4)]);
  });

  test('counts what is held until another phase of the job up to the end of that one', () => {
    const phases = [0, 1].flatMap((j) => [
      pour(`p${j}`, 8, { jobId: `j${j}`, ...holding(1, `c${j}`) }),
      cure(`c${j}`, 96, { jobId: `j${j}` }),
    ]);
    const links = [link('p0', 'c0'), link('p1', 'c1', 'FS', 4)];
    const input = inputWith({ pools: blankets, jobs: jobs(2), phases, links });
    expect(poolEnergy(input, ids(2))).toEqual([104, 104 + 108]);
    // Of another job it is not known to be back before this one is finished: only the pour itself counts.
    const apart = phases.map((phase) => (phase.id.startsWith('c') ? { ...phase, jobId: 'j1' } : phase));
    expect(poolEnergy({ ...input, phases: apart }, ids(2))).toEqual([8, 8 + 108]);
  });

  test('leaves out what need not fit: started and pinned phases, jobs not asked for, pools that have nothing', () => {
    const input = inputWith({
      pools: [...blankets, { id: 'none', quantity: 0 }],
      jobs: jobs(3),
      phases: [
        cure('a', 90, { jobId: 'j0', ...holding(1), facts: { actualStart: slot(0) } }),
        cure('b', 91, { jobId: 'j0', ...holding(1), facts: { pinnedStart: slot(0) } }),
        cure('c', 92, { jobId: 'j1', holds: [{ poolId: 'none', quantity: 1 }] }),
        cure('d', 93, { jobId: 'j2', ...holding(1) }),
      ],
    });
    expect(poolEnergy(input, ids(2))).toEqual([0, 0]);
    expect(poolEnergy(input, ids(3))).toEqual([0, 0, 93]);
    expect(poolEnergy(input, ids(3), ({ id }) => id !== 'd')).toEqual([0, 0, 0]);
  });

  test('ends with the horizon', () => {
    const phases = [
      cure('a', 60, { jobId: 'j0', ...holding(1) }),
      cure('b', 60, { jobId: 'j1', ...holding(1) }),
    ];
    expect(poolEnergy(inputWith({ horizon: 100, pools: blankets, jobs: jobs(2), phases }), ids(2))).toEqual([
      60, 100,
    ]);
  });

  test('says how far equipment alone keeps the objective', () => {
    // Two pours under the only blankets, a day's cure each: alone both end at 36 + 96, together one of them a cure and a pour later.
    const phases = [0, 1].flatMap((j) => [
      pour(`p${j}`, 8, { jobId: `j${j}`, ...holding(1, `c${j}`) }),
      cure(`c${j}`, 96, { jobId: `j${j}` }),
    ]);
    const input = inputWith({
      pools: blankets,
      jobs: jobs(2),
      phases,
      links: [link('p0', 'c0'), link('p1', 'c1')],
    });
    const unlimited = { ...input, pools: [{ id: 'blankets', quantity: 2 }] };
    expect(objectiveBound(unlimited, DEFAULT_WEIGHTS)).toBe(132 + 132);
    expect(objectiveBound(input, DEFAULT_WEIGHTS)).toBe(132 + 208);
  });
});

describe('any company with little equipment', () => {
  const company: fc.Arbitrary<PlanInput> = fc
    .record({
      quantity: fc.integer({ min: 1, max: 3 }),
      jobs: fc.array(
        fc.record({
          pour: fc.integer({ min: 1, max: 20 }),
          work: fc.integer({ min: 1, max: 50 }),
          cure: fc.integer({ min: 1, max: 120 }),
          asked: fc.integer({ min: 1, max: 3 }),
          after: fc.constantFrom('FS', 'SS', 'FF', 'SF'),
          lag: fc.integer({ min: -12, max: 12 }),
          lagIn: fc.constantFrom('working', 'elapsed'),
          until: fc.constantFrom('work', 'cure', 'other', undefined),
        }),
        { minLength: 2, maxLength: 5 },
      ),
      now: fc.integer({ min: 0, max: 90 }),
      turn: fc.integer({ min: 0, max: 4 }),
    })
    .map(({ quantity, jobs: drawn, now, turn }) => {
      const phases = drawn.flatMap((one, j) => {
        const until =
          one.until === 'other' ? `cure${(j + 1) % drawn.length}` : one.until && `${one.until}${j}`;
        return [
          pour(`pour${j}`, one.pour, { jobId: `j${j}`, ...holding(Math.min(one.asked, quantity), until) }),
          work(`work${j}`, one.work, { jobId: `j${j}` }),
          cure(`cure${j}`, one.cure, { jobId: `j${j}` }),
        ];
      });
      const links = drawn.flatMap(({ after, lag, lagIn }, j) => [
        link(`pour${j}`, `work${j}`, after, lag, lagIn),
        link(`work${j}`, `cure${j}`),
      ]);
      const order = phases.map(({ id }) => id);
      return inputWith({
        now: slot(now),
        pools: [{ id: 'blankets', quantity }],
        crews: ['a', 'b'].map((id) => ({ id, trades: ['mason'], calendarId: 'workdays' })),
        jobs: jobs(drawn.length),
        phases,
        links,
        order: [...order.slice(turn), ...order.slice(0, turn)],
      });
    });

  test('finishes no job sooner than the bound says, and no plan is better than the whole bound', () => {
    fc.assert(
      fc.property(company, (input) => {
        const made = plan(input);
        fc.pre(made.jobs.every(({ complete }) => complete));
        const turns = poolEnergy(
          input,
          made.jobs.map(({ id }) => id),
        );
        const finishes = made.jobs.map(({ finish }) => finish!).sort((a, b) => a - b);
        finishes.forEach((finish, k) => expect(finish).toBeGreaterThanOrEqual(turns[k]!));
        expect(objectiveBound(input, DEFAULT_WEIGHTS)).toBeLessThanOrEqual(objectiveOf(input, made).total);
      }),
      { numRuns: 300 },
    );
  });
});
