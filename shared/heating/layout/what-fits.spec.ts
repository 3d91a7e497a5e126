import { describe, expect, it } from '@jest/globals';
import { fitRanges, sayMisfit } from './what-fits.js';
import type { Layer } from './layer.js';
import { EXAMPLE_CABLE } from './testing/example-site.js';

const feet = (shortest: number, longest: number) => ({ shortest: shortest * 12, longest: longest * 12 });
const set = (length: number) => ({ ...EXAMPLE_CABLE, length: length * 12 });

describe('the lengths that fit', () => {
  const layer = (...spreads: readonly (readonly [number, number])[]) =>
    ({ spreads: () => spreads.map(([least, full]) => ({ least, full })) }) as unknown as Layer;

  it('are what any way of laying takes, with holes where none does', () => {
    expect(fitRanges([layer([90, 100], [60, 70]), layer([65, 90])])).toEqual([
      { shortest: 60, longest: 100 },
    ]);
    expect(fitRanges([layer([90, 100], [60, 70])])).toEqual([
      { shortest: 60, longest: 70 },
      { shortest: 90, longest: 100 },
    ]);
    expect(fitRanges([layer()])).toEqual([]);
  });
});

describe('a set that does not fit', () => {
  const ranges = [feet(80, 100), feet(120.5, 140.2)];

  it('is too long by so much, and the longest that fit are named', () => {
    expect(sayMisfit(set(150), ranges)).toMatchObject({
      code: 'setTooLong',
      message: expect.stringMatching(
        /^the set is 10 ft too long .* a set of 121 ft to 140 ft fits.*never cut/,
      ),
      fits: ranges[1],
    });
  });

  it('is too short by so much, and the nearest longer and shorter ones are named', () => {
    expect(sayMisfit(set(110), ranges)).toMatchObject({
      code: 'setTooShort',
      message: expect.stringMatching(
        /^the set is 11 ft too short .* 121 ft to 140 ft fits, and so does one of 80 ft to 100 ft;/,
      ),
      fits: ranges[1],
    });
    expect(sayMisfit(set(40), ranges).message).toContain('40 ft too short to leave no gap over 12 in');
  });

  it('is not told a length that no label has', () => {
    expect(sayMisfit(set(40), [feet(80.2, 80.8), feet(90, 90.5)])).toMatchObject({
      message: expect.stringContaining('a set of 90 ft fits'),
    });
  });

  it('finds nothing that fits where nothing does', () => {
    expect(sayMisfit(set(40), [])).toMatchObject({ code: 'setTooLong', fits: null });
  });
});
