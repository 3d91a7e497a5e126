import { describe, expect, test } from '@jest/globals';
import type { Decoder } from './decoder.js';
import { neighbourhoodSearch } from './neighbourhood-search.js';

const COUNT = 12;

/** Activities one after the other in the order of their keys; fitness is a large figure and the places in which they are out of order. */
class OutOfOrder implements Decoder {
  readonly activities = COUNT;
  readonly directions = 1;
  readonly durations = new Int32Array(COUNT).fill(1);
  readonly loads = new Float64Array(COUNT).fill(1);
  readonly shown: { keys: Float64Array; fitness: number }[] = [];

  constructor(
    readonly base: number,
    readonly bound = base,
  ) {}

  tails(): Int32Array {
    return new Int32Array(COUNT);
  }

  decode(_direction: 0 | 1, keys: Float64Array, _delay: number, starts: Int32Array): number {
    const order = Array.from(keys, (_, i) => i).sort((a, b) => keys[a]! - keys[b]!);
    order.forEach((activity, place) => (starts[activity] = place));
    const wrong = order.filter((activity, place) => activity !== place).length;
    this.shown.push({ keys: Float64Array.from(keys), fitness: this.base + wrong });
    return this.base + wrong;
  }
}

const around = {
  jobs: Int32Array.from({ length: COUNT }, (_, i) => i % 3),
  trades: Int32Array.from({ length: COUNT }, (_, i) => i % 2),
  settled: new Array<boolean>(COUNT).fill(false),
};
const reversed = Float64Array.from({ length: COUNT }, (_, i) => -i);
const run = (decoder: OutOfOrder, seed: number, passes = 300) =>
  neighbourhoodSearch(decoder, reversed, around, { seed, passes });

describe('a search among neighbourhoods', () => {
  test.each([1, 2, 3, 4, 5])(
    'gives the best of all it was shown, and keys that decode to it (seed %d)',
    (seed) => {
      const decoder = new OutOfOrder(1000);
      const { keys, fitness, passes } = run(decoder, seed);
      expect(decoder.shown).toHaveLength(passes);
      expect(fitness).toBe(Math.min(...decoder.shown.map((one) => one.fitness)));
      expect(fitness).toBeLessThan(decoder.shown[0]!.fitness);
      expect(new OutOfOrder(1000).decode(0, keys, Infinity, new Int32Array(COUNT))).toBe(fitness);
    },
  );

  test('takes another way where worse orders are worse by a small share than where they are worse by a great one', () => {
    const worse = (base: number): number => {
      const decoder = new OutOfOrder(base, -1);
      run(decoder, 7);
      const fitness = decoder.shown.map((one) => one.fitness - base);
      let least = Infinity;
      return fitness.filter((one) => {
        const risen = one > least;
        least = Math.min(least, one);
        return risen;
      }).length;
    };
    expect(worse(1_000_000)).toBeGreaterThan(0);
    expect(worse(1_000_000)).not.toBe(worse(0));
  });

  test('stops at the bound', () => {
    const sorted = Float64Array.from({ length: COUNT }, (_, i) => i);
    const decoder = new OutOfOrder(50);
    expect(neighbourhoodSearch(decoder, sorted, around, { seed: 1, passes: 300 })).toMatchObject({
      fitness: 50,
      passes: 1,
    });
  });
});
