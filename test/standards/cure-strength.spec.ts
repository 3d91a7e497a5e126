import { describe, expect, it } from '@jest/globals';
import { betaCc, modelCodeS } from '../../shared/cure/beta-cc.js';
import { steadyIntervals } from '../../shared/cure/interval.js';
import { temperatureTimeFactor } from '../../shared/cure/nurse-saul.js';
import { plowmanPercent } from '../../shared/cure/plowman.js';
import { ageOfStrength, strengthAt } from '../../shared/cure/strength-curve.js';
import { megapascals } from '../../shared/units/stress.js';
import { celsius } from '../../shared/units/temperature.js';
import { days, hours } from '../../shared/units/time.js';

// From memory: Shetty, Concrete Technology; coefficients A 32, B 54, datum −11 °C.
describe('Plowman', () => {
  it('a week of half days at 20 and 10 °C has 26.6 of 40 MPa', () => {
    const durations = Array.from({ length: 14 }, () => hours(12));
    const temperatures = durations.map((_, i) => celsius(i % 2 === 0 ? 20 : 10));
    const factor = temperatureTimeFactor(steadyIntervals(durations, temperatures), celsius(-11));
    expect(factor).toBe(4368);
    const percent = plowmanPercent(factor, 32, 54);
    expect(percent).toBeCloseTo(66.6, 1);
    expect(Math.abs((40 * percent) / 100 - 26.6)).toBeLessThan(0.2);
  });
});

// Source: open reference implementation of structural codes, its own tests (recomputed).
describe('β_cc', () => {
  it.each([
    [9, 0.826166831],
    [27, 0.995422968],
    [56, 1.075970779],
    [365, 1.198124627],
  ])('s 0.25 at %p d is %p', (age, expected) => {
    expect(betaCc(days(age), 0.25)).toBeCloseTo(expected, 8);
  });

  it.each([
    ['32.5N', 0.77425],
    ['32.5R', 0.84507],
    ['42.5N', 0.84507],
    ['42.5R', 0.87401],
    ['52.5N', 0.87401],
    ['52.5R', 0.87401],
  ] as const)('cement %s at 10 d is %p (Model Code 2010, fcm 20)', (cement, expected) => {
    expect(Math.abs(betaCc(days(10), modelCodeS(cement, 20)) - expected)).toBeLessThan(1e-5);
  });

  // Source: an open finite-element program's own tests (recomputed): EN 1992 mean strength less 8 MPa.
  it('C40 with s 0.25 has 29.382437587 MPa at 7 d', () => {
    expect(betaCc(days(7), 0.25) * (40 + 8) - 8).toBeCloseTo(29.382437587, 8);
  });
});

// Computed by hand: S = 40·exp[−(30/t)^0.8].
describe('exponential strength', () => {
  const curve = { ultimate: megapascals(40), tau: hours(30), exponent: 0.8 };

  it.each([
    [12, 4.9903],
    [24, 12.1028],
    [72, 24.3487],
    [168, 31.0889],
    [672, 36.809],
  ])('at %p h is %p MPa', (age, expected) => {
    expect(Math.abs(strengthAt(curve, hours(age)) - expected)).toBeLessThan(1e-3);
  });

  it.each([
    [3.447, 9.78],
    [7, 14.98],
    [24, 69.467],
  ])('%p MPa is reached at %p h', (required, expected) => {
    expect(Math.abs((ageOfStrength(curve, megapascals(required)) ?? 0) - expected)).toBeLessThan(1e-3);
  });
});
