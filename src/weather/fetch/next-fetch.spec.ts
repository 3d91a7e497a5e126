import { describe, expect, it } from '@jest/globals';
import { afterAnswer, afterFailure } from './next-fetch.js';

const NOW = new Date('2031-01-06T14:00:00Z');
const minutes = (at: Date): number => (at.getTime() - NOW.getTime()) / 60_000;

describe('the next fetch', () => {
  it('comes after the interval, spread over a tenth of it', () => {
    expect([0, 0.5, 1].map((chance) => minutes(afterAnswer(NOW, 60, chance)))).toEqual([60, 63, 66]);
  });

  it('comes sooner after a failure and later after each further one, up to an hour', () => {
    const longest = [1, 2, 3, 4, 5, 50].map((failures) => minutes(afterFailure(NOW, failures, null, 1)));
    expect(longest).toEqual([5, 10, 20, 40, 60, 60]);
    expect(minutes(afterFailure(NOW, 1, null, 0))).toBe(2.5);
  });

  it('does not come before the server wants to be asked again', () => {
    expect(minutes(afterFailure(NOW, 1, 30 * 60_000, 0))).toBe(30);
    expect(minutes(afterFailure(NOW, 5, 1000, 1))).toBe(60);
  });
});
