import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { dailyMeans } from './daily-means.js';

const hours = (count: number, mild: number, others: Record<number, number | null> = {}) =>
  Array.from({ length: count }, (_, i) => (i in others ? (others[i] ?? null) : mild));

describe('mean daily values', () => {
  it('are half of the highest and the lowest of 24 hours, however long each lasts', () => {
    const means = dailyMeans(hours(30, 40, { 3: 20, 5: 70 }), 'after');
    expect(means.slice(0, 7)).toEqual([45, 45, 45, 45, 55, 55, 40]);
    expect(means.slice(7)).toEqual(hours(23, 0).map(() => null));
  });

  it('look back or forward', () => {
    const values = hours(30, 40, { 29: 20 });
    expect(dailyMeans(values, 'before').slice(22)).toEqual([null, 40, 40, 40, 40, 40, 40, 30]);
    expect(dailyMeans(values, 'after').slice(0, 8)).toEqual([40, 40, 40, 40, 40, 40, 30, null]);
  });

  it('are unknown with one hour unknown', () => {
    const means = dailyMeans(hours(49, 40, { 24: null }), 'before');
    expect(means[23]).toBe(40);
    expect(means.slice(24, 48)).toEqual(hours(24, 0).map(() => null));
    expect(means[48]).toBe(40);
  });

  it('lie between the values they are of', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -20, max: 100 }), { minLength: 24, maxLength: 60 }),
        (values) => {
          for (const side of ['before', 'after'] as const)
            for (const mean of dailyMeans(values, side)) {
              if (mean === null) continue;
              expect(mean).toBeGreaterThanOrEqual(Math.min(...values));
              expect(mean).toBeLessThanOrEqual(Math.max(...values));
            }
        },
      ),
    );
  });
});
