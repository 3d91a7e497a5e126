import { describe, expect, it } from '@jest/globals';
import { medianOf, quantileOf, rounded } from './timing.js';

describe('figures of many runs', () => {
  const times = [5, 1, 4, 2, 3, 10, 9, 8, 7, 6];

  it('are the middle, and what a share does not exceed', () => {
    // Nearest rank: the least value that at least the share of all does not exceed.
    expect([
      medianOf(times),
      quantileOf(times, 0.95),
      quantileOf(times, 0.5),
      quantileOf(times, 0.1),
    ]).toEqual([6, 10, 5, 1]);
    expect(quantileOf([], 0.95)).toBe(0);
  });

  it('are rounded to so many places', () => {
    expect([rounded(1.2345), rounded(1.2345, 0)]).toEqual([1.23, 1]);
  });
});
