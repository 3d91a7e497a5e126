import { describe, expect, it } from '@jest/globals';
import { riserHeight } from '../../shared/entry/rules/riser-height.js';
import { riserSpread } from '../../shared/entry/rules/riser-spread.js';
import { treadDepth } from '../../shared/entry/rules/tread-depth.js';
import { inches } from '../../shared/units/length.js';

// Source: IRC 2018 R311.7.5 (published). Risers at most 7¾ in, largest less smallest at most ⅜ in, treads at least 10 in.
describe('IRC 2018 R311.7.5', () => {
  it.each([
    [7.75, true],
    [7.76, false],
  ])('riser of %p in: %p', (riser, ok) => {
    expect(riserHeight(inches(riser)).ok).toBe(ok);
  });

  it.each([
    [[7.25, 7.625], true],
    [[7.25, 7.626], false],
    [[7.0, 7.2, 7.375], true],
    [[7.0, 7.2, 7.376], false],
  ])('risers of %p in: %p', (risers, ok) => {
    expect(riserSpread(risers.map(inches)).ok).toBe(ok);
  });

  it.each([
    [10, true],
    [9.99, false],
  ])('tread of %p in: %p', (tread, ok) => {
    expect(treadDepth(inches(tread)).ok).toBe(ok);
  });

  it('names itself beside each finding', () => {
    for (const finding of [riserHeight(inches(7)), riserSpread([inches(7)]), treadDepth(inches(11))]) {
      expect(finding.source.mark).toBe('P');
      expect(finding.source.text).toContain('R311.7.5');
    }
  });
});
