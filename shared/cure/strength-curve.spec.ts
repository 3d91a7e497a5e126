import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { megapascals } from '../units/stress.js';
import { celsius } from '../units/temperature.js';
import { hours } from '../units/time.js';
import { ageMethod, hoursUntil } from './age-method.js';
import { cautiousAge } from './cautious-age.js';
import { equivalentAge, fhpRate } from './equivalent-age.js';
import { steadyIntervals } from './interval.js';
import { curveOf, DEFAULT_MIXTURES } from './mixture.js';
import { nurseSaulAge } from './nurse-saul.js';
import { ageOfStrength, strengthAt } from './strength-curve.js';

const curve = curveOf(DEFAULT_MIXTURES.concrete);

describe('a strength curve', () => {
  it('begins at nothing', () => {
    expect(strengthAt(curve, hours(0))).toBe(0);
    expect(strengthAt(curve, hours(-1))).toBe(0);
  });

  it('grows with age and stays under its end', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 5000, noNaN: true }), (age) => {
        const now = strengthAt(curve, hours(age));
        expect(strengthAt(curve, hours(age + 1))).toBeGreaterThan(now);
        expect(now).toBeLessThan(curve.ultimate);
      }),
    );
  });

  it('is inverted exactly', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 31, noNaN: true }), (required) => {
        const age = ageOfStrength(curve, megapascals(required));
        expect(age).not.toBeNull();
        expect(strengthAt(curve, age ?? hours(0))).toBeCloseTo(required, 6);
      }),
    );
  });

  it('never reaches its end, and needs no time for nothing', () => {
    expect(ageOfStrength(curve, curve.ultimate)).toBeNull();
    expect(ageOfStrength(curve, megapascals(0))).toBe(0);
  });
});

describe('the cautious age', () => {
  const temperatures = fc.array(fc.double({ min: -15, max: 35, noNaN: true }), {
    minLength: 1,
    maxLength: 8,
  });
  const history = (given: number[]) =>
    steadyIntervals(
      given.map(() => hours(6)),
      given.map(celsius),
    );

  it('is the lesser of the two, whatever the history', () => {
    fc.assert(
      fc.property(temperatures, (given) => {
        const intervals = history(given);
        expect(cautiousAge(intervals)).toBe(
          Math.min(nurseSaulAge(intervals), equivalentAge(intervals, fhpRate)),
        );
      }),
    );
  });

  it('is reached after the hours that were foretold', () => {
    fc.assert(
      fc.property(temperatures, fc.double({ min: 1, max: 35, noNaN: true }), (given, steady) => {
        const before = history(given);
        const required = hours(60);
        const wait = hoursUntil(ageMethod(), before, required, celsius(steady));
        if (wait === null) throw new Error('never');
        const then = [...before, ...steadyIntervals([wait], [celsius(steady)])];
        expect(cautiousAge(then)).toBeGreaterThanOrEqual(60 - 1e-6);
        if (wait > 1) {
          const sooner = [...before, ...steadyIntervals([hours(wait - 1)], [celsius(steady)])];
          expect(cautiousAge(sooner)).toBeLessThan(60);
        }
      }),
    );
  });

  it('is never reached in the cold, and at once when it is reached already', () => {
    expect(hoursUntil(ageMethod(), [], hours(10), celsius(0))).toBeNull();
    expect(hoursUntil(ageMethod(), [], hours(10), celsius(-5))).toBeNull();
    expect(hoursUntil(ageMethod(), steadyIntervals([hours(20)], [celsius(20)]), hours(10), celsius(-5))).toBe(
      0,
    );
  });
});

describe('mixtures', () => {
  it('each have a source and a curve that ends where it says', () => {
    for (const mixture of Object.values(DEFAULT_MIXTURES)) {
      expect(mixture.source.text).not.toBe('');
      expect(strengthAt(curveOf(mixture), hours(1e9)) / curveOf(mixture).ultimate).toBeCloseTo(1, 4);
    }
  });
});
