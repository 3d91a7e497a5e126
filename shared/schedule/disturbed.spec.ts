import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import { Disturbed } from './disturbed.js';

const SLOTS = 4_000;
const stretch = fc
  .tuple(fc.integer({ min: -50, max: SLOTS + 50 }), fc.integer({ min: 0, max: 300 }))
  .map(([from, length]) => ({ from, to: from + length }));

/** Whether two stretches share a slot of the horizon; one of no length counts as a slot. */
function overlap(a: { from: number; to: number }, b: { from: number; to: number }): boolean {
  return a.from < b.to && b.from < Math.max(a.to, a.from + 1);
}

test('a disturbed stretch is never missed, in its own row', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 0, max: 2 }), stretch), { maxLength: 6 }),
      stretch,
      (noted, asked) => {
        const disturbed = new Disturbed(3, SLOTS);
        for (const [row, { from, to }] of noted) disturbed.add(row, from, to);
        for (const row of [0, 1, 2]) {
          const hit = noted.some(([of, one]) => of === row && overlap(one, asked));
          if (hit && asked.to > asked.from) {
            expect(disturbed.touches(row, asked.from, asked.to)).toBe(true);
            expect(disturbed.touchesAny(asked.from, asked.to)).toBe(true);
          }
        }
      },
    ),
    { numRuns: 500 },
  );
});

test('what is eight hours or more away is not touched, and nothing is touched by no time at all', () => {
  const disturbed = new Disturbed(2, SLOTS);
  disturbed.add(1, 1_000, 1_040);
  expect(disturbed.touches(1, 1_039, 1_041)).toBe(true);
  expect(disturbed.touches(1, 1_040 + 32, 3_900)).toBe(false);
  expect(disturbed.touches(1, 0, 1_000 - 32)).toBe(false);
  expect(disturbed.touches(0, 0, SLOTS)).toBe(false);
  expect(disturbed.touchesAny(0, 1_000 - 32)).toBe(false);
  expect(disturbed.touches(1, 1_010, 1_010)).toBe(false);
  expect(disturbed.touchesAny(1_010, 1_010)).toBe(false);
});

test('what lies beyond the horizon is found at its end', () => {
  const disturbed = new Disturbed(1, SLOTS);
  disturbed.add(0, SLOTS + 5_000, SLOTS + 6_000);
  expect(disturbed.touches(0, 3_000, 2 ** 30)).toBe(true);
  expect(disturbed.touches(0, 0, 3_000)).toBe(false);
});
