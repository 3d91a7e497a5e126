import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { CompiledCalendar } from '../compiled-calendar.js';
import type { Interval } from '../model.js';
import { slot } from '../slot.js';
import { workdays } from '../spec-input.js';
import { leastClock, longestLead } from './open-time.js';

const week = CompiledCalendar.of(workdays(5));

/** Stretches up to slot 120, from breaks and lengths. */
const stretches: fc.Arbitrary<Interval[]> = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 })), {
    minLength: 1,
    maxLength: 6,
  })
  .map((pattern) => {
    let t = 0;
    return pattern.map(([pause, length]) => {
      const from = t + pause;
      t = from + length;
      return { from: slot(from), to: slot(t) };
    });
  });

describe('the least time of the clock', () => {
  test.each([
    [0, 0],
    [1, 1],
    [32, 32],
    // The night between two days of 32 slots is 64 slots long.
    [33, 33 + 64],
    [64, 64 + 64],
    [65, 65 + 128],
  ])('for %d open slots of workdays is %d', (slots, clock) => {
    expect(leastClock(week, slots)).toBe(clock);
  });

  test('for more than there is never comes', () => {
    expect(leastClock(week, 5 * 32 + 1)).toBe(Infinity);
  });

  test('is the least over every start, tried one by one', () => {
    fc.assert(
      fc.property(stretches, fc.integer({ min: 1, max: 20 }), (open, slots) => {
        const hours = CompiledCalendar.of(open);
        const tried = Array.from({ length: 120 }, (_, t) => (hours.add(slot(t), slots) ?? Infinity) - t);
        expect(leastClock(hours, slots)).toBe(Math.min(...tried));
      }),
      { numRuns: 300 },
    );
  });
});

describe('the longest lead', () => {
  test('of four slots of workdays goes back over the night, and over all of a weekend', () => {
    // From 07:00, slot 28 of a day, back over 64 closed slots to 14:00 the day before.
    expect(longestLead(CompiledCalendar.of(workdays(9, -4)), 4, 0, 96 * 4)).toBe(64 + 4);
    const weeks = CompiledCalendar.of([...workdays(5), ...workdays(5, 7)]);
    expect(longestLead(weeks, 4, 0, 96 * 11)).toBe(64 + 2 * 96 + 4);
  });

  test('is at least as long as the lead from every instant, tried one by one', () => {
    fc.assert(
      fc.property(
        stretches,
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 0, max: 20 }),
        (open, slots, since) => {
          const hours = CompiledCalendar.of(open);
          const longest = longestLead(hours, slots, since, 120);
          for (let t = 0; t <= 120; t++) {
            const left = hours.worked(t) - slots;
            const back = left <= 0 ? since : hours.reach(left)!;
            expect(t - longest).toBeLessThanOrEqual(back);
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
