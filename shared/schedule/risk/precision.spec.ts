import { describe, expect, test } from '@jest/globals';
import { slot } from '../slot.js';
import { chanceOf, dateAt } from './precision.js';

describe('a chance', () => {
  test.each([
    // Wilson score interval without continuity correction, recomputed from the formula of Wilson (1927).
    [0, 10, 0, 0.27753],
    [5, 10, 0.23659, 0.76341],
    [81, 263, 0.25525, 0.3662],
    [15, 148, 0.06239, 0.16056],
  ])('of %d in %d lies in its interval', (hits, samples, low, high) => {
    const got = chanceOf(hits, samples);
    expect(got.chance).toBe(hits / samples);
    expect(got.low).toBeCloseTo(low, 3);
    expect(got.high).toBeCloseTo(high, 3);
  });
});

describe('a date', () => {
  const hundred = Array.from({ length: 100 }, (_, i) => slot(i + 1));
  test('is the least that the share of samples keeps, with ranks around it', () => {
    expect(dateAt(hundred, 0.5)).toEqual({ share: 0.5, at: 50, low: 40, high: 61 });
    expect(dateAt(hundred, 0.8)).toMatchObject({ at: 80, low: 72, high: 89 });
  });

  test('is nothing where too many samples have no finish', () => {
    const some = [...hundred.slice(0, 60), ...new Array<null>(40).fill(null)];
    expect(dateAt(some, 0.5)).toEqual({ share: 0.5, at: 50, low: 40, high: null });
    expect(dateAt(some, 0.8).at).toBeNull();
    expect(dateAt([slot(4)], 0.8)).toEqual({ share: 0.8, at: 4, low: 4, high: 4 });
  });
});
