import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { epochMs } from '../units/time.js';
import { clip, merge, subtract, type Stretch } from './stretch.js';

const s = (from: number, to: number): Stretch => ({ from: epochMs(from), to: epochMs(to) });
const anyStretches = fc.array(
  fc
    .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 10 }))
    .map(([from, length]) => s(from, from + length)),
);
const covers = (stretches: readonly Stretch[], at: number) =>
  stretches.some(({ from, to }) => from <= at && at < to);

describe('stretches', () => {
  it('that touch become one', () => {
    expect(merge([s(3, 5), s(0, 2), s(2, 3), s(7, 8)])).toEqual([s(0, 5), s(7, 8)]);
  });

  it('that lie in one another become the outer', () => {
    expect(merge([s(0, 10), s(2, 3)])).toEqual([s(0, 10)]);
  });

  it('are clipped to another, and nothing is left where they only touch', () => {
    expect(clip(s(0, 5), s(3, 9))).toEqual([s(3, 5)]);
    expect(clip(s(0, 3), s(3, 9))).toEqual([]);
  });

  it('lose what is taken from them', () => {
    expect(subtract([s(0, 10)], [s(2, 3), s(5, 7)])).toEqual([s(0, 2), s(3, 5), s(7, 10)]);
    expect(subtract([s(0, 10)], [s(0, 10)])).toEqual([]);
    expect(subtract([s(4, 6)], [s(0, 2), s(8, 9)])).toEqual([s(4, 6)]);
  });

  it('cover after merging what they covered before', () => {
    fc.assert(
      fc.property(anyStretches, (stretches) => {
        const merged = merge(stretches);
        for (let at = 0; at < 55; at += 1) expect(covers(merged, at)).toBe(covers(stretches, at));
        merged.slice(1).forEach((one, i) => expect(one.from).toBeGreaterThan(merged[i]?.to ?? 0));
      }),
    );
  });

  it('cover after subtracting what the others do not', () => {
    fc.assert(
      fc.property(anyStretches, anyStretches, (a, b) => {
        const left = subtract(merge(a), merge(b));
        for (let at = 0; at < 55; at += 1) expect(covers(left, at)).toBe(covers(a, at) && !covers(b, at));
      }),
    );
  });
});
