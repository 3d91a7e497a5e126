import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { sameWindow, stackRows, stretchAround, WHOLE, within } from './window.js';

describe('what is drawn', () => {
  it('is always more than what is in sight, on either side, and not much more', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), fc.integer({ min: 1, max: 4000 }), (scrolled, size) => {
        const { from, to } = stretchAround(scrolled, size);
        expect(from).toBeLessThanOrEqual(scrolled - 40);
        expect(to).toBeGreaterThanOrEqual(scrolled + size + 40);
        expect(to - from).toBeLessThan(size + 330);
      }),
    );
  });

  it('stays the same within a step of scrolling', () => {
    const window = (left: number, top: number) => ({
      rows: stretchAround(top, 500),
      days: stretchAround(left, 1000),
    });
    expect(sameWindow(window(205, 300), window(279, 310))).toBe(true);
    expect(sameWindow(window(205, 300), window(281, 300))).toBe(false);
  });

  it('has what reaches into it, and not what only touches', () => {
    const stretch = { from: 100, to: 200 };
    expect([within(stretch, 50, 101), within(stretch, 199, 300), within(stretch, 0, 1000)]).toEqual([
      true,
      true,
      true,
    ]);
    expect([within(stretch, 50, 100), within(stretch, 200, 300)]).toEqual([false, false]);
    expect(within(WHOLE.days, 1e9, 1e9 + 1)).toBe(true);
  });
});

it('rows are stacked without gaps', () => {
  expect(stackRows([44, 100, 60])).toEqual({ tops: [0, 44, 144], height: 204 });
  expect(stackRows([])).toEqual({ tops: [], height: 0 });
});
