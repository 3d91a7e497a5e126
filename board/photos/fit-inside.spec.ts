import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { fitInside } from './fit-inside.js';

describe('a picture that is to fit', () => {
  it.each([
    [4032, 3024, [1600, 1200]],
    [3024, 4032, [1200, 1600]],
    [1600, 1600, [1600, 1600]],
    [640, 480, [640, 480]],
    [20_000, 3, [1600, 1]],
  ])('%d by %d becomes %j', (width, height, fitted) => {
    expect(fitInside(width, height, 1600)).toEqual(fitted);
  });

  it('keeps its shape to a pixel and never grows', () => {
    const side = fc.integer({ min: 1, max: 12_000 });
    fc.assert(
      fc.property(side, side, (width, height) => {
        const [w, h] = fitInside(width, height, 1600);
        expect(Math.max(w, h)).toBeLessThanOrEqual(1600);
        expect(w <= width && h <= height).toBe(true);
        fc.pre(w > 1 && h > 1);
        const exact = (height * w) / width;
        // Half a pixel of the shorter side, and what half a pixel of the other makes of it.
        expect(Math.abs(h - exact)).toBeLessThanOrEqual(0.5 + (0.5 * height) / width);
      }),
    );
  });
});
