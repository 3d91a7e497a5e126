import { describe, expect, test } from '@jest/globals';
import { allOrders, tryOrders } from './all-orders.js';
import { PlainDecoder } from './plain-decoder.js';

describe('all orders', () => {
  test('are those that keep to what comes before', () => {
    expect(allOrders([[], [], []], 10)).toHaveLength(6);
    expect(allOrders([[], [0], [0]], 10)!.map((keys) => [...keys])).toEqual([
      [0, 1, 2],
      [0, 2, 1],
    ]);
    expect(allOrders([], 10)).toHaveLength(1);
  });

  test('are none on a circle, and not listed when they are too many', () => {
    expect(allOrders([[1], [0]], 10)).toEqual([]);
    expect(allOrders([[], [], []], 6)).toHaveLength(6);
    expect(allOrders([[], [], []], 5)).toBeUndefined();
  });

  const decoder = new PlainDecoder({
    durations: [4, 2, 2],
    successors: [[], [2], []],
    demands: [[1], [2], [1]],
    capacities: [2],
  });
  const orders = allOrders([[], [], [1]], 10)!;

  test('are tried until one cannot be bettered', () => {
    const seen: number[] = [];
    const best = tryOrders(decoder, orders, { seed: 1, passes: 9, onPass: (n) => seen.push(n) });
    expect(best.fitness).toBe(6);
    expect(seen).toHaveLength(best.passes);
    expect(best.passes).toBeLessThanOrEqual(orders.length);
    expect(tryOrders(decoder, orders, { seed: 1, passes: 9, stop: () => true }).passes).toBe(1);
  });
});
