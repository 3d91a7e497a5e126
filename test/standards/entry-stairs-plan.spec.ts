import { describe, expect, it } from '@jest/globals';
import { equalRisers } from '../../shared/entry/risers/riser-count.js';
import { drainageSlope } from '../../shared/entry/rules/drainage-slope.js';
import { guard } from '../../shared/entry/rules/guard.js';
import { handrail } from '../../shared/entry/rules/handrail.js';
import { landingSlope } from '../../shared/entry/rules/landing-slope.js';
import { inches } from '../../shared/units/length.js';
import { percent } from '../../shared/units/weather-units.js';

// Limit published (IRC 2018 R311.7.5), numbers computed by hand: n = ⌈rise/7¾⌉.
describe('equal risers', () => {
  it.each([
    [30, 4, 7.5],
    [31, 4, 7.75],
    [31.01, 5, 6.202],
    [36, 5, 7.2],
  ])('over %p in are %p of %p in', (rise, count, riser) => {
    const found = equalRisers(inches(rise));
    expect(found.count).toBe(count);
    expect(found.riser).toBeCloseTo(riser, 9);
  });
});

// Source: IRC R311.7.8 (published).
describe('a handrail', () => {
  it.each([
    [3, true],
    [4, false],
  ])('%p risers without one: %p', (risers, ok) => {
    expect(handrail(risers, false).ok).toBe(ok);
    expect(handrail(risers, true).ok).toBe(true);
  });
});

// Source: IRC R311.3 and R401.3 (published).
describe('a slope of exactly 2 %', () => {
  it('satisfies the landing and the drainage at once, and nothing else does', () => {
    expect([landingSlope(percent(2)).ok, drainageSlope(percent(2)).ok]).toEqual([true, true]);
    expect([landingSlope(percent(2.01)).ok, drainageSlope(percent(2.01)).ok]).toEqual([false, true]);
    expect([landingSlope(percent(1.99)).ok, drainageSlope(percent(1.99)).ok]).toEqual([true, false]);
  });
});

// Source: IRC R312.1 (published).
describe('a guard', () => {
  it.each([
    [30, true],
    [30.1, false],
  ])('drop of %p in without one: %p', (drop, ok) => {
    const finding = guard(inches(drop), false);
    expect(finding.ok).toBe(ok);
    expect(finding.source).toEqual({ mark: 'P', text: 'IRC R312.1' });
  });
});
