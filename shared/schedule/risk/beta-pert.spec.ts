import { describe, expect, test } from '@jest/globals';
import { BetaPert } from './beta-pert.js';

const estimate = (optimistic: number, likely: number, pessimistic: number) => ({
  optimistic,
  likely,
  pessimistic,
});
const SHARES = [0.001, 0.1, 0.25, 0.5, 0.75, 0.9, 0.999];

describe('quantiles of a three-point estimate', () => {
  test('are those of beta(1, 5) when the optimistic is the likely: the share below x is 1 − (1 − x)⁵', () => {
    const skewed = new BetaPert(estimate(0, 0, 1));
    for (const u of SHARES) expect(skewed.quantile(u)).toBeCloseTo(1 - (1 - u) ** (1 / 5), 4);
  });

  test('are those of beta(3, 3) when the likely is the middle: the share below x is 10x³ − 15x⁴ + 6x⁵', () => {
    const even = new BetaPert(estimate(10, 12, 14));
    for (const u of SHARES) {
      const x = (even.quantile(u) - 10) / 4;
      expect(10 * x ** 3 - 15 * x ** 4 + 6 * x ** 5).toBeCloseTo(u, 5);
    }
  });

  test('stay inside the estimate at both ends, and for shares that are none', () => {
    const days = new BetaPert(estimate(2, 3, 8));
    expect(days.quantile(0)).toBe(2);
    expect(days.quantile(1)).toBe(8);
    expect(days.quantile(-0.5)).toBe(2);
    expect(days.quantile(1.5)).toBe(8);
  });

  test('of a certain duration are the duration', () => {
    for (const u of SHARES) expect(new BetaPert(estimate(5, 5, 5)).quantile(u)).toBe(5);
  });
});

test.each([
  [3, 2, 4],
  [1, 5, 4],
  [NaN, 2, 3],
])('an estimate of %d, %d, %d is refused', (a, m, b) => {
  expect(() => new BetaPert(estimate(a, m, b))).toThrow('goes from optimistic over likely to pessimistic');
  expect(() => new BetaPert(estimate(a, m, b))).toThrow(RangeError);
});
