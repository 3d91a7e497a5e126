import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import { mergeIntervals, subtractIntervals } from './intervals.js';
import type { Interval } from './model.js';
import { slot } from './slot.js';

const intervals = fc.array(
  fc
    .tuple(fc.integer({ min: -20, max: 60 }), fc.integer({ min: -2, max: 15 }))
    .map(([from, length]): Interval => ({ from: slot(from), to: slot(from + length) })),
  { maxLength: 12 },
);

const covers = (list: readonly Interval[], t: number): boolean =>
  list.some(({ from, to }) => from <= t && t < to);

test('merging keeps every slot and leaves gaps between stretches', () => {
  fc.assert(
    fc.property(intervals, (list) => {
      const merged = mergeIntervals(list);
      for (let t = -25; t < 80; t++) expect(covers(merged, t)).toBe(covers(list, t));
      for (let i = 1; i < merged.length; i++) expect(merged[i]!.from).toBeGreaterThan(merged[i - 1]!.to);
    }),
  );
});

test('subtracting leaves what is in the base and in no hole', () => {
  fc.assert(
    fc.property(intervals, intervals, (base, holes) => {
      const left = subtractIntervals(mergeIntervals(base), mergeIntervals(holes));
      for (let t = -25; t < 80; t++) expect(covers(left, t)).toBe(covers(base, t) && !covers(holes, t));
      for (const { from, to } of left) expect(to).toBeGreaterThan(from);
    }),
  );
});
