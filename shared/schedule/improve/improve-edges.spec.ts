import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { PlanInput } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { cure, inputWith, link, pour, work } from '../spec-input.js';
import { verify } from '../verify/verify.js';
import { EngineDecoder } from './engine-decoder.js';
import { improve } from './improve.js';
import { chooseNeighbourhood } from './neighbourhoods.js';
import { DEFAULT_WEIGHTS, objectiveOf } from './objective.js';
import { objectiveBound } from './objective-bound.js';
import { seededRandom } from './random.js';

/** One job of waits that share a heater and links: what is searched from both ends. */
const plainInputs = fc
  .record({
    lengths: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 3, maxLength: 14 }),
    needs: fc.array(fc.nat(3), { minLength: 14, maxLength: 14 }),
    ties: fc.array(fc.tuple(fc.nat(13), fc.nat(13)), { maxLength: 12 }),
  })
  .map(({ lengths, needs, ties }): PlanInput => {
    const id = (i: number): string => `p${String(i).padStart(2, '0')}`;
    return inputWith({
      pools: [{ id: 'heater', quantity: 4 }],
      phases: lengths.map((length, i) =>
        cure(id(i), length, { holds: [{ poolId: 'heater', quantity: 1 + needs[i]! }] }),
      ),
      links: ties
        .filter(([a, b]) => a < b && b < lengths.length)
        .map(([a, b], i) => ({ ...link(id(a), id(b)), id: `l${i}` })),
    });
  });

describe('an improvement of a plain project', () => {
  test('has the dates of a pass it was shown, is sound and never worse', () => {
    fc.assert(
      fc.property(plainInputs, fc.nat(99), fc.integer({ min: 1, max: 60 }), (input, seed, schedules) => {
        const shown: number[] = [];
        const lengths = input.phases.map(({ duration }) => duration.slots);
        const result = improve(input, {
          seed,
          schedules,
          inspect: (starts) => shown.push(Math.max(...starts.map((start, i) => start + lengths[i]!))),
        });
        expect(shown.length).toBe(result.schedules);
        expect(result.schedules).toBeLessThanOrEqual(schedules);
        expect(verify(input, result.plan)).toEqual([]);
        expect(result.after.total).toBeLessThanOrEqual(result.before.total);
        // The engine's own first plan is not one of the passes, and may be as good as the best of them.
        expect([...shown, result.before.finish]).toContain(result.plan.jobs[0]!.finish);
        expect(result.plan.jobs[0]!.finish).toBeLessThanOrEqual(
          Math.min(result.before.finish, ...shown.slice(0, -1)),
        );
      }),
      { numRuns: 150 },
    );
  });
});

describe('an improvement that can go no further', () => {
  // One pour a day, which leaves hours over that the bound still counts.
  const one = inputWith({
    phases: Array.from({ length: 12 }, (_, i) => pour(`w${String(i).padStart(2, '0')}`, 30)),
  });

  test('ends at once where the plan it is given meets the bound', () => {
    const alone = inputWith({
      crews: Array.from({ length: 9 }, (_, i) => ({
        id: `c${i}`,
        trades: [`t${i}`],
        calendarId: 'workdays',
      })),
      phases: Array.from({ length: 9 }, (_, i) => work(`w${i}`, 5, { trade: `t${i}` })),
    });
    const weights = { ...DEFAULT_WEIGHTS, crewMoves: 0 };
    expect(improve(alone, { seed: 1, schedules: 40, weights })).toMatchObject({ schedules: 0, proved: true });
    expect(improve(one, { seed: 1, schedules: 40 }).proved).toBe(false);
  });

  test('spends all of what it is given but perhaps one pass where the bound is out of reach', () => {
    for (const schedules of [1, 2, 3, 4, 5, 6, 7, 12, 40]) {
      const spent = improve(one, { seed: 1, schedules }).schedules;
      expect(spent).toBeLessThanOrEqual(schedules);
      // A pass that is left over alone cannot begin another search.
      expect(spent).toBeGreaterThanOrEqual(schedules - 1);
    }
  });

  test('is proved where equipment is what it takes', () => {
    const input = inputWith({
      pools: [{ id: 'heater', quantity: 2 }],
      phases: [3, 4, 5, 6].map((n) => cure(`w${n}`, n, { holds: [{ poolId: 'heater', quantity: 1 }] })),
    });
    expect(improve(input, { seed: 1, schedules: 30 })).toMatchObject({ bound: 9, proved: true });
  });

  test('does the same for a plain project whether it is watched or not', () => {
    const input = inputWith({
      pools: [{ id: 'heater', quantity: 2 }],
      phases: [7, 8, 9].map((n) => cure(`w${n}`, n, { holds: [{ poolId: 'heater', quantity: 1 }] })),
    });
    const watched = improve(input, { seed: 1, schedules: 30, inspect: () => undefined });
    expect(improve(input, { seed: 1, schedules: 30 })).toEqual(watched);
    // Two heaters for 24 slots of waiting are 12 by the bound, and 15 at best, as none can be split.
    expect(watched.plan.jobs[0]!.finish).toBe(15);
    expect(watched).toMatchObject({ bound: 12, proved: false });
  });
});

describe('without a number of schedules', () => {
  // Nine waits of odd lengths with one heater at a time: whatever the order, the work is more than links alone would ask for.
  const odd = inputWith({
    phases: Array.from({ length: 9 }, (_, i) => work(`w${i}`, 3 + i)),
    jobs: [{ id: 'job', priority: 0, due: slot(1) }],
  });

  test('few phases end by themselves when every order has been tried', () => {
    const few = inputWith({ phases: [pour('a', 20), pour('b', 18), pour('c', 17)] });
    expect(improve(few, { seed: 1 }).schedules).toBe(6);
  });

  test('a later round goes on from where the one before it ended', () => {
    const next = seededRandom(7);
    const phases = Array.from({ length: 90 }, (_, i) =>
      cure(`p${String(i).padStart(2, '0')}`, 1 + Math.floor(10 * next()), {
        holds: ['x', 'y', 'z'].map((poolId) => ({ poolId, quantity: 1 + Math.floor(9 * next()) })),
      }),
    );
    const links = phases.slice(6).flatMap(({ id }, i) =>
      [0, 1].map((k) => ({
        ...link(phases[Math.max(0, Math.floor((i + 6) * (1 - next()) - 1))]!.id, id),
        id: `${i}-${k}`,
      })),
    );
    const pools = ['x', 'y', 'z'].map((id) => ({ id, quantity: 16 }));
    const bests = new Map<number, number>();
    let passes = 0;
    improve(inputWith({ phases, links, pools }), {
      seed: 1,
      stop: () => passes >= 15_000,
      onProgress: ({ schedules, objective }) => {
        passes = schedules;
        bests.set(Math.ceil(schedules / 5000), objective);
      },
    });
    const ends = [...bests.values()];
    expect(ends).toEqual([...ends].sort((a, b) => b - a));
    expect(new Set(ends).size).toBeGreaterThan(1);
  });

  test('the search goes round after round until it is stopped', () => {
    let asked = 0;
    const seen: number[] = [];
    const result = improve(odd, {
      seed: 1,
      stop: () => ++asked > 5400,
      onProgress: ({ schedules }) => seen.push(schedules),
    });
    expect(result.schedules).toBeGreaterThan(5000);
    expect(seen).toEqual(seen.map((_, i) => i + 1));
    expect(seen.length).toBe(result.schedules);
    expect(result.after.total).toBeLessThanOrEqual(result.before.total);
  }, 60_000);
});

describe('what has no place', () => {
  const nobody = work('nobody', 5, { trade: 'roofer', jobId: 'other' });
  const input = inputWith({
    jobs: [
      { id: 'job', priority: 0 },
      { id: 'other', priority: 0, due: slot(3) },
    ],
    phases: [work('a', 4), nobody, cure('b', 2)],
  });

  test('costs more than anything that is late, and keeps nothing from being searched', () => {
    const { before, plan: made } = improve(input, { seed: 1, schedules: 12 });
    expect(before).toMatchObject({ unplanned: 1, lateness: 0, finish: 32 });
    expect(made.phases.map(({ state }) => state)).toEqual(['planned', 'planned', 'unplanned']);
    expect(objectiveBound(input, DEFAULT_WEIGHTS)).toBe(32);
  });

  test('is decoded as starting at the horizon, with no tail', () => {
    const decoder = new EngineDecoder(input, plan(input), 0, DEFAULT_WEIGHTS);
    const starts = new Int32Array(3);
    decoder.decode(0, Float64Array.of(0, 1, 2), Infinity, starts);
    expect([...starts]).toEqual([28, 0, input.horizon]);
    expect([...decoder.durations]).toEqual([4, 2, 0]);
    expect(decoder.tails()[2]).toBe(0);
  });

  test('may be a circle in which work has begun all the same', () => {
    const begun = work('a', 4, { facts: { actualStart: slot(28) } });
    const circle = inputWith({
      now: slot(30),
      phases: [begun, work('b', 3), work('c', 2)],
      links: [link('a', 'b'), link('b', 'a', 'FF')],
    });
    const decoder = new EngineDecoder(circle, plan(circle), 0, DEFAULT_WEIGHTS);
    expect(decoder.tails().every(Number.isSafeInteger)).toBe(true);
    expect(improve(circle, { seed: 1, schedules: 9 }).before.unplanned).toBe(1);
  });

  test('does not count as moved from what was promised', () => {
    const promised = { ...nobody, commitment: { start: slot(50), finish: slot(60) } };
    const with2 = { ...input, phases: [promised] };
    expect(objectiveOf(with2, plan(with2)).disturbance).toBe(0);
  });
});

describe('the bound', () => {
  test('keeps facts, promises and earlier dates, whoever has them', () => {
    const input = inputWith({
      now: slot(30),
      freezeUntil: slot(40),
      calendars: [...inputWith({}).calendars, { id: 'nights', open: [{ from: slot(60), to: slot(96) }] }],
      phases: [
        work('begun', 10, { facts: { actualStart: slot(28), crewId: 'masons' } }),
        work('promised', 4, { commitment: { start: slot(36), finish: slot(40), crewId: 'masons' } }),
        work('before', 4, {
          trade: undefined,
          crewId: 'masons',
          previous: { start: slot(33), crewId: 'masons' },
        }),
        cure('wait', 3),
      ],
    });
    // Begun at 28, ten slots long: it ends the job at 40 with the promised one; nobody else needs to wait for it.
    const bound = objectiveBound(input, DEFAULT_WEIGHTS);
    expect(bound).toBe(10);
    expect(objectiveOf(input, plan(input)).finish).toBeGreaterThan(bound);
  });
});

describe('a neighbourhood', () => {
  test('is empty where everything has begun', () => {
    const around = { jobs: Int32Array.of(0), trades: Int32Array.of(0), settled: [true] };
    expect(chooseNeighbourhood(around, Int32Array.of(0), seededRandom(1))).toEqual([]);
  });
});
