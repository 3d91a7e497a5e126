import { describe, expect, test } from '@jest/globals';
import { chanceBy, durationVariance, expectedDuration, normalBelow } from './three-point.js';

const estimate = (optimistic: number, likely: number, pessimistic: number) => ({
  optimistic,
  likely,
  pessimistic,
});

describe('the normal distribution', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.1: area from 0 to z.
  test.each([
    [0, 0],
    [0.5, 0.19146],
    [1, 0.34134],
    [1.96, 0.475],
    [2.58, 0.49506],
    [3, 0.49865],
    [3.5, 0.49977],
    [4, 0.49997],
  ])('between 0 and %d lies %d of all', (z, area) => {
    expect(normalBelow(z) - 0.5).toBeCloseTo(area, 5);
    expect(0.5 - normalBelow(-z)).toBeCloseTo(area, 5);
  });

  test('falls away without a step where one form of the integral takes over from the other', () => {
    expect(normalBelow(-3) - normalBelow(-3 - 1e-9)).toBeGreaterThan(0);
    expect(normalBelow(-3) - normalBelow(-3 - 1e-9)).toBeLessThan(1e-11);
  });

  test('far out is nothing or all, and never outside of that', () => {
    expect(normalBelow(-9)).toBe(0);
    expect(normalBelow(9)).toBe(1);
    expect(normalBelow(-8.4)).toBeGreaterThan(0);
  });
});

describe('a chain of estimates', () => {
  // By the classical weights 1, 4, 1 over 6, and a sixth of the range (Malcolm, Roseboom, Clark and Fazar 1959).
  const chain = [estimate(1, 2, 9), estimate(2, 5, 8)];

  test('has the sum of the means and of the variances', () => {
    expect(chain.map(expectedDuration)).toEqual([3, 5]);
    expect(chain.map(durationVariance)).toEqual([(8 / 6) ** 2, 1]);
  });

  test('is done by its mean in half of all cases, and a standard deviation later in 84 of 100', () => {
    expect(chanceBy(8, chain)).toBeCloseTo(0.5, 12);
    expect(chanceBy(8 + Math.sqrt(16 / 9 + 1), chain)).toBeCloseTo(0.84134, 5);
    expect(chanceBy(8 - Math.sqrt(16 / 9 + 1), chain)).toBeCloseTo(0.15866, 5);
  });

  test('of which all is certain is done by its sum, and not before', () => {
    const certain = [estimate(2, 2, 2), estimate(3, 3, 3)];
    expect(chanceBy(5, certain)).toBe(1);
    expect(chanceBy(4.99, certain)).toBe(0);
  });
});
