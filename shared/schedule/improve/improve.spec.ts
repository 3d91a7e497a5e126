import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { Phase, PlanInput } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { verify } from '../verify/verify.js';
import { improve, type ImproveProgress } from './improve.js';
import { objectiveBound } from './objective-bound.js';
import { DEFAULT_WEIGHTS, objectiveOf } from './objective.js';

const work = (slots: number) => ({ kind: 'work', slots, mode: 'interruptible' }) as const;
const day = 96;

/** Jobs of a few phases that fight for two crews and a heater, with days of ten hours. */
function winter(jobs: number, draw: (below: number) => number): PlanInput {
  const open = Array.from({ length: 120 }, (_, d) => ({ from: slot(d * day + 28), to: slot(d * day + 68) }));
  const phases: Phase[] = [];
  const links: PlanInput['links'][number][] = [];
  for (let j = 0; j < jobs; j++) {
    for (let p = 0; p < 4; p++) {
      const id = `${j}-${p}`;
      phases.push({
        id,
        jobId: `${j}`,
        duration: p === 2 ? { kind: 'elapsed', slots: day } : work(4 + draw(60)),
        ...(p === 2 ? {} : { trade: p === 1 ? 'mason' : ['labour', 'mason'][draw(2)]! }),
        ...(p === 1 ? { holds: [{ poolId: 'heater', quantity: 1, untilPhaseId: `${j}-2` }] } : {}),
      });
      if (p > 0) links.push({ id, from: `${j}-${p - 1}`, to: id, kind: 'FS', lag: 0, lagIn: 'elapsed' });
    }
  }
  return {
    horizon: 120 * day,
    now: slot(0),
    freezeUntil: slot(0),
    calendars: [{ id: 'days', open }],
    crews: [
      { id: 'a', trades: ['mason'], calendarId: 'days' },
      { id: 'b', trades: ['labour', 'mason'], calendarId: 'days' },
    ],
    pools: [{ id: 'heater', quantity: 1 }],
    weather: [],
    inspections: [],
    jobs: Array.from({ length: jobs }, (_, j) => ({
      id: `${j}`,
      priority: draw(3),
      due: slot(day * (4 + draw(12))),
    })),
    phases,
    links,
  };
}

const winters = fc
  .record({
    jobs: fc.integer({ min: 1, max: 14 }),
    draws: fc.array(fc.nat(9999), { minLength: 150, maxLength: 150 }),
  })
  .map(({ jobs, draws }) => {
    let at = 0;
    return winter(jobs, (below) => draws[at++ % draws.length]! % below);
  });

// Two jobs want one mason; the rule goes by priority, so the urgent job that is due at once stands behind the long one.
const rivals: PlanInput = {
  ...winter(1, () => 0),
  crews: [{ id: 'a', trades: ['mason'], calendarId: 'days' }],
  jobs: [
    { id: 'long', priority: 0 },
    { id: 'short', priority: 1, due: slot(day) },
  ],
  phases: [
    { id: 'l', jobId: 'long', duration: work(80), trade: 'mason' },
    { id: 's', jobId: 'short', duration: work(8), trade: 'mason' },
  ],
  links: [],
};

describe('an improvement', () => {
  test('is sound, never worse, no better than the bound, and is what the engine makes of its order', () => {
    fc.assert(
      fc.property(winters, fc.nat(99), (input, seed) => {
        const {
          plan: made,
          order,
          before,
          after,
          bound,
          schedules,
          proved,
        } = improve(input, { seed, schedules: 24 });
        expect(verify(input, made)).toEqual([]);
        expect(before).toEqual(objectiveOf(input, plan(input)));
        expect(after).toEqual(objectiveOf(input, made));
        expect(after.total).toBeLessThanOrEqual(before.total);
        expect(after.total).toBeGreaterThanOrEqual(bound);
        expect(proved).toBe(after.total === bound);
        expect(schedules).toBeLessThanOrEqual(24);
        expect(plan({ ...input, order })).toEqual(made);
      }),
      { numRuns: 30 },
    );
  });

  test('gives equal results for equal seeds', () => {
    fc.assert(
      fc.property(winters, (input) => {
        expect(improve(input, { seed: 3, schedules: 15 })).toEqual(
          improve(input, { seed: 3, schedules: 15 }),
        );
      }),
      { numRuns: 8 },
    );
  });

  test('turns two jobs round when that keeps a promise', () => {
    const { before, after, plan: made, order } = improve(rivals, { seed: 1, schedules: 40 });
    expect(before.lateness).toBeGreaterThan(0);
    expect(after.lateness).toBe(0);
    expect(order).toEqual(['s', 'l']);
    expect(made.phases.map(({ id, start }) => [id, start])).toEqual([
      ['l', 36],
      ['s', 28],
    ]);
  });

  test('leaves what is promised inside the freeze window where it is', () => {
    const frozen = {
      ...rivals,
      freezeUntil: slot(day),
      phases: [
        { ...rivals.phases[0]!, commitment: { start: slot(28), finish: slot(28 + 2 * day) } },
        rivals.phases[1]!,
      ],
    };
    expect(improve(frozen, { seed: 1, schedules: 40 }).plan.phases[0]!.start).toBe(28);
  });

  test('reports how far it is, each pass once, and stops when told to', () => {
    const seen: ImproveProgress[] = [];
    const input = winter(8, (below) => seen.length % below);
    let asked = 0;
    const result = improve(input, {
      seed: 1,
      stop: () => ++asked > 30,
      onProgress: (progress) => seen.push(progress),
    });
    expect(seen.map(({ schedules }) => schedules)).toEqual(seen.map((_, i) => i + 1));
    expect(result.schedules).toBe(seen.length);
    for (const { objective, bound, withinPercent } of seen) {
      expect(withinPercent).toBeCloseTo((100 * (objective - bound)) / bound, 9);
    }
    expect(seen.map(({ objective }) => objective)).toEqual(
      [...seen].map(({ objective }) => objective).sort((a, b) => b - a),
    );
  });

  test('of nothing is nothing', () => {
    const empty = { ...rivals, phases: [], jobs: [] };
    expect(improve(empty, { seed: 1, schedules: 5 })).toMatchObject({
      order: [],
      proved: true,
      withinPercent: null,
    });
  });
});

describe('the objective', () => {
  test('weighs lateness by the job, counts what moved against promises, and moves between sites', () => {
    const input: PlanInput = {
      ...rivals,
      phases: [
        { ...rivals.phases[0]!, commitment: { start: slot(30), finish: slot(0), crewId: 'b' } },
        rivals.phases[1]!,
      ],
    };
    const made = plan(input);
    const [, short] = made.jobs;
    const got = objectiveOf(input, made);
    expect(got).toMatchObject({ unplanned: 0, crewMoves: 1, disturbance: 2 + day });
    expect(got.lateness).toBe((short!.finish! - day) / 2);
    expect(got.finish).toBe(made.jobs[0]!.finish! + short!.finish!);
    const { lateness, finish, disturbance, crewMoves } = DEFAULT_WEIGHTS;
    expect(got.total).toBe(
      got.lateness * lateness +
        got.finish * finish +
        got.disturbance * disturbance +
        got.crewMoves * crewMoves,
    );
  });

  test('has a bound in which jobs wait for nothing but the open hours of the crews together', () => {
    // The short job can be first, on its first morning; both together need two days and eight slots of the third. Nothing is late.
    expect(objectiveBound(rivals, DEFAULT_WEIGHTS)).toBe(28 + 8 + (2 * day + 28 + 8));
  });
});
