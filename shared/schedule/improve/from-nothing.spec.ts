import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { PlanInput } from '../model.js';
import { plan } from '../plan.js';
import { slot } from '../slot.js';
import { inputWith, link, work } from '../spec-input.js';
import { EngineDecoder } from './engine-decoder.js';
import { fromNothing } from './from-nothing.js';
import { inOrder } from './in-order.js';
import { DEFAULT_WEIGHTS, objectiveOf } from './objective.js';

const weights = DEFAULT_WEIGHTS;

function begin(input: PlanInput, passes: number, bound = 0, stop?: () => boolean) {
  const first = plan(input);
  const decoder = new EngineDecoder(input, first, bound, weights);
  const told: number[][] = [];
  const result = fromNothing(
    decoder,
    { input, first, weights },
    { passes, stop, onPass: (n, best) => told.push([n, best]) },
  );
  const made = plan({ ...input, order: inOrder(decoder.ids, result.keys) });
  return {
    ...result,
    told,
    made,
    before: objectiveOf(input, first).total,
    after: objectiveOf(input, made).total,
  };
}

/** Jobs of three phases for two crews, the second of one trade only. */
const contested = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 1, max: 30 }), fc.nat(600)), {
    minLength: 2,
    maxLength: 6,
  })
  .map((jobs): PlanInput => {
    const ids = jobs.map((_, i) => `${i}`);
    return inputWith({
      crews: [
        { id: 'masons', trades: ['mason'], calendarId: 'workdays' },
        { id: 'helpers', trades: ['labour'], calendarId: 'workdays' },
      ],
      jobs: jobs.map(([, , due], i) => ({ id: ids[i]!, priority: i % 2, due: slot(due) })),
      phases: jobs.flatMap(([a, b], i) => [
        work(`${i}a`, a, { jobId: ids[i]!, trade: 'labour' }),
        work(`${i}b`, b, { jobId: ids[i]! }),
        work(`${i}c`, 51 - a, { jobId: ids[i]!, trade: 'labour' }),
      ]),
      links: ids.flatMap((i) => [link(`${i}a`, `${i}b`), link(`${i}b`, `${i}c`)]),
    });
  });

describe('a start from nothing', () => {
  test('is never worse than the plan it is given, and counts every pass', () => {
    let better = 0;
    fc.assert(
      fc.property(contested, fc.integer({ min: 0, max: 12 }), (input, passes) => {
        const got = begin(input, passes);
        expect(got.fitness).toBeLessThanOrEqual(got.before);
        expect(got.passes).toBeLessThanOrEqual(passes);
        expect(got.told.map(([n]) => n)).toEqual(got.told.map((_, i) => i + 1));
        expect(got.told.length).toBe(got.passes);
        if (got.fitness < got.before) {
          expect(got.after).toBe(got.fitness);
          better++;
        }
        expect(begin(input, passes)).toEqual(got);
      }),
      { numRuns: 60, seed: 20_251_125 },
    );
    expect(better).toBeGreaterThan(5);
  });

  test('goes on justifying while that helps', () => {
    let further = 0;
    fc.assert(
      fc.property(contested, (input) => {
        const [all, generated] = [begin(input, 99), begin(input, 3)];
        expect(all.fitness).toBeLessThanOrEqual(generated.fitness);
        if (all.fitness < generated.fitness) further++;
        // Serial, parallel with its forward pass, job after job; else pairs of backward and forward, two of no help at each end.
        expect((all.passes - 4) % 2).toBe(0);
        expect(all.passes).toBeGreaterThanOrEqual(4 + 4 + 4);
      }),
      { numRuns: 60, seed: 20_251_125 },
    );
    expect(further).toBeGreaterThan(0);
  });

  test('does nothing when told to stop, or when nothing can be better', () => {
    const input = inputWith({ phases: [work('a', 3), work('b', 4)] });
    expect(begin(input, 50, 0, () => true).passes).toBe(0);
    expect(begin(input, 50, Infinity).passes).toBe(0);
  });

  test('leaves what has no place at the end of the order', () => {
    const input = inputWith({ phases: [work('a', 3, { trade: 'roofer' }), work('b', 4), work('c', 2)] });
    const { keys, made } = begin(input, 50);
    expect(keys[0]).toBe(Math.max(...keys));
    expect(made.phases.map(({ state }) => state)).toEqual(['unplanned', 'planned', 'planned']);
  });
});
