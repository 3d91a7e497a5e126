import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { PlainDecoder } from './plain-decoder.js';
import { populationSearch } from './population-search.js';
import { broken, projectOf } from './testing/small-project.js';

const draws = fc.array(fc.nat(99), { minLength: 150, maxLength: 150 });
const projects = (most: number) => draws.map((drawn) => projectOf(drawn, most));

/** The best latest finish over every order. */
function bestOfAllOrders(decoder: PlainDecoder): number {
  const keys = new Float64Array(decoder.activities);
  const starts = new Int32Array(decoder.activities);
  let best = Infinity;
  const place = (left: readonly number[], rank: number): void => {
    if (left.length === 0) best = Math.min(best, decoder.decode(0, keys, Infinity, starts));
    for (const i of left) {
      keys[i] = rank;
      place(
        left.filter((j) => j !== i),
        rank + 1,
      );
    }
  };
  place([...keys.keys()], 0);
  return best;
}

function starts(decoder: PlainDecoder, keys: Float64Array): Int32Array {
  const into = new Int32Array(decoder.activities);
  decoder.decode(0, keys, Infinity, into);
  return into;
}

describe('the search', () => {
  test('finds the best of all orders where they can all be tried', () => {
    fc.assert(
      fc.property(projects(6), fc.nat(1000), (project, seed) => {
        const decoder = new PlainDecoder(project);
        expect(populationSearch(decoder, { seed, passes: 300 }).fitness).toBe(bestOfAllOrders(decoder));
      }),
      { numRuns: 120 },
    );
  });

  test('returns an order that gives its result, spends no more than it may, and does alike for equal seeds', () => {
    fc.assert(
      fc.property(projects(14), fc.nat(1000), fc.integer({ min: 1, max: 120 }), (project, seed, passes) => {
        const decoder = new PlainDecoder(project);
        let counted = 0;
        const result = populationSearch(decoder, { seed, passes, onPass: (n) => (counted = n) });
        expect(result.passes).toBe(counted);
        expect(counted).toBeLessThanOrEqual(passes);
        const got = starts(decoder, result.keys);
        expect(broken(project, got, false)).toBe(0);
        expect(Math.max(...got.map((start, i) => start + project.durations[i]!))).toBe(result.fitness);
        expect(populationSearch(decoder, { seed, passes })).toEqual(result);
      }),
      { numRuns: 200 },
    );
  });

  test('keeps to the last pass, also where that one goes backward', () => {
    fc.assert(
      fc.property(projects(14), fc.nat(1000), fc.integer({ min: 1, max: 7 }), (project, seed, passes) => {
        const decoder = new PlainDecoder(project);
        const { keys, fitness, passes: spent } = populationSearch(decoder, { seed, passes });
        expect(spent).toBeLessThanOrEqual(passes);
        const got = starts(decoder, keys);
        expect(Math.max(...got.map((start, i) => start + project.durations[i]!))).toBe(fitness);
      }),
      { numRuns: 1500 },
    );
  });

  test('is never worse than an order it is given, and stops when it is told to', () => {
    fc.assert(
      fc.property(projects(12), fc.array(fc.nat(99), { minLength: 12, maxLength: 12 }), (project, order) => {
        const decoder = new PlainDecoder(project);
        const keys = Float64Array.from(order.slice(0, decoder.activities));
        const given = decoder.decode(0, keys, Infinity, new Int32Array(decoder.activities));
        const result = populationSearch(decoder, { seed: 1, passes: 50, from: [keys], stop: () => true });
        expect(result).toMatchObject({ fitness: given, passes: 1 });
        const on = populationSearch(decoder, { seed: 1, passes: 50, from: [keys] });
        expect(on.fitness).toBeLessThanOrEqual(given);
      }),
      { numRuns: 200 },
    );
  });

  test('tries the orders it is given one after the other, as far as its passes go', () => {
    const decoder = new PlainDecoder(
      projectOf(
        Array.from({ length: 150 }, (_, i) => (i * 37) % 100),
        12,
      ),
    );
    const keys = [1, 2, 3].map((k) =>
      Float64Array.from({ length: decoder.activities }, (_, i) => (i * 7 * k) % 11),
    );
    const alone = keys.map((one) => decoder.decode(0, one, Infinity, new Int32Array(decoder.activities)));
    const spend = (passes: number): number =>
      populationSearch(decoder, { seed: 1, passes, from: keys }).fitness;
    expect([spend(1), spend(2), spend(3)]).toEqual([1, 2, 3].map((n) => Math.min(...alone.slice(0, n))));
  });
});
