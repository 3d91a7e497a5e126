import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { CompiledCalendar } from './compiled-calendar.js';
import type { Interval } from './model.js';
import { slot } from './slot.js';

const END = 90;
const open = fc.array(
  fc
    .tuple(fc.integer({ min: 0, max: END - 12 }), fc.integer({ min: 1, max: 12 }))
    .map(([from, length]): Interval => ({ from: slot(from), to: slot(from + length) })),
  { maxLength: 9 },
);
const instant = fc.integer({ min: -5, max: END + 5 }).map(slot);
const count = fc.integer({ min: 0, max: 25 });

/** The same questions answered slot by slot. */
function slow(list: readonly Interval[]) {
  const isOpen = (t: number): boolean => list.some(({ from, to }) => from <= t && t < to);
  const worked = (from: number, to: number): number => {
    let sum = 0;
    for (let t = from; t < to; t++) if (isOpen(t)) sum++;
    return sum;
  };
  const firstFrom = (from: number, fits: (t: number) => boolean): number | null => {
    for (let t = from; t <= END + 5; t++) if (fits(t)) return t;
    return null;
  };
  const lastUpTo = (to: number, fits: (t: number) => boolean): number | null => {
    for (let t = to; t >= -40; t--) if (fits(t)) return t;
    return null;
  };
  return { isOpen, worked, firstFrom, lastUpTo };
}

describe('answers agree with counting slot by slot', () => {
  test('worked, isOpen, snap, snapInstant', () => {
    fc.assert(
      fc.property(open, instant, (list, t) => {
        const calendar = CompiledCalendar.of(list);
        const plain = slow(list);
        expect(calendar.worked(t)).toBe(plain.worked(-10, t));
        expect(calendar.isOpen(t)).toBe(plain.isOpen(t));
        expect(calendar.snap(t)).toBe(plain.firstFrom(t, plain.isOpen));
        const edge = (at: number): boolean => plain.isOpen(at) || plain.isOpen(at - 1);
        expect(calendar.snapInstant(t)).toBe(plain.firstFrom(t, edge));
      }),
    );
  });

  test('add and subtract', () => {
    fc.assert(
      fc.property(open, instant, count, (list, t, slots) => {
        const calendar = CompiledCalendar.of(list);
        const plain = slow(list);
        expect(calendar.add(t, slots)).toBe(
          slots === 0 ? t : plain.firstFrom(t, (at) => plain.worked(t, at) === slots),
        );
        expect(calendar.subtract(t, slots)).toBe(
          slots === 0 ? t : plain.lastUpTo(t, (at) => plain.isOpen(at) && plain.worked(at, t) === slots),
        );
      }),
    );
  });

  test('gap and gapBefore', () => {
    fc.assert(
      fc.property(open, instant, fc.integer({ min: 1, max: 15 }), (list, t, slots) => {
        const calendar = CompiledCalendar.of(list);
        const plain = slow(list);
        const whole = (at: number): boolean => plain.worked(at, at + slots) === slots;
        expect(calendar.gap(t, slots)).toBe(plain.firstFrom(t, whole));
        expect(calendar.gapBefore(t, slots)).toBe(plain.lastUpTo(t - slots, whole));
      }),
    );
  });

  test('between', () => {
    fc.assert(
      fc.property(open, instant, instant, (list, a, b) => {
        const [from, to] = a < b ? [a, b] : [b, a];
        const parts = CompiledCalendar.of(list).between(from, to);
        const plain = slow(list);
        for (let t = -6; t < END + 6; t++) {
          const inside = parts.some((part) => part.from <= t && t < part.to);
          expect(inside).toBe(t >= from && t < to && plain.isOpen(t));
        }
      }),
    );
  });
});

test('a calendar that is always open counts the clock, before the horizon as well', () => {
  const always = CompiledCalendar.always(100);
  expect(always.add(slot(-30), 40)).toBe(10);
  expect(always.subtract(slot(10), 40)).toBe(-30);
  expect(always.add(slot(90), 11)).toBeNull();
  expect(always.snap(slot(55))).toBe(55);
});

test('the open slot with so many before it: the first for numbers below none, none past the end', () => {
  const calendar = CompiledCalendar.of([
    { from: slot(4), to: slot(6) },
    { from: slot(10), to: slot(13) },
  ]);
  expect([-3, 0, 1, 2, 4, 5].map((n) => calendar.at(n))).toEqual([4, 4, 5, 10, 12, null]);
  expect([1, 2, 3, 5, 6].map((n) => calendar.reach(n))).toEqual([5, 6, 11, 13, null]);
});

test('finish never falls as the start of interruptible work rises, and work undone and done again comes back', () => {
  fc.assert(
    fc.property(open, instant, count, (list, t, slots) => {
      const calendar = CompiledCalendar.of(list);
      const finish = calendar.add(t, slots);
      const later = calendar.add(slot(t + 1), slots);
      if (finish === null) expect(later).toBeNull();
      else if (later !== null) expect(later).toBeGreaterThanOrEqual(finish);
      if (finish !== null && slots > 0) {
        const back = calendar.subtract(finish, slots)!;
        expect(calendar.add(back, slots)).toBe(finish);
        expect(back).toBe(calendar.snap(t));
      }
    }),
  );
});
