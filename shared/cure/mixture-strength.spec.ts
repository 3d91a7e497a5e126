import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { psi } from '../units/stress.js';
import { celsius } from '../units/temperature.js';
import { days, hours } from '../units/time.js';
import { acceleratedAge, plainAge } from './accelerator.js';
import { ageBy, ageMethod, hoursUntil, type AgeMethodChoice } from './age-method.js';
import { ageOfBetaCc, betaCc, modelCodeS } from './beta-cc.js';
import { steadyIntervals } from './interval.js';
import { measuredStrength } from './measured-strength.js';
import { DEFAULT_MIXTURES, type Mixture } from './mixture.js';
import { ageOfMixtureStrength, methodWords, mixtureStrength } from './mixture-strength.js';
import { plowmanFactor, plowmanPercent } from './plowman.js';
import { after, placementOf, steadyReadings } from './testing/placement-fixture.js';

const plain = DEFAULT_MIXTURES.concrete;
const accelerated: Mixture = { ...plain, accelerated: true };
const hyperbolic: Mixture = { ...plain, hyperbolic: { kPerHour: 0.02, startHours: 6 } };
const age = fc.double({ min: 0.1, max: 2000, noNaN: true });

describe('an accelerator', () => {
  it('counts: never less, never more than half as much again, never more than a day ahead', () => {
    fc.assert(
      fc.property(age, (t) => {
        const ahead = acceleratedAge(hours(t));
        expect(ahead).toBeGreaterThan(t);
        expect(ahead).toBeLessThanOrEqual(1.5 * t + 1e-9);
        expect(ahead - t).toBeLessThanOrEqual(24 + 1e-9);
        expect(plainAge(ahead)).toBeCloseTo(t, 8);
      }),
    );
  });

  it('makes the same readings show more strength, and says how it was counted', () => {
    const readings = steadyReadings(24, 60);
    const strength = (mixture: Mixture) => measuredStrength(placementOf({ mixture }), readings, after(24));
    expect(strength(accelerated).strength).toBeGreaterThan(strength(plain).strength);
    expect(strength(accelerated).method).toContain('accelerator counted as half as much age again');
    expect(strength(plain).method).not.toContain('accelerator');
  });
});

describe('the strength of a mixture', () => {
  it.each([
    ['plain', plain],
    ['accelerated', accelerated],
    ['hyperbolic', hyperbolic],
  ])('%s: its inverse gives the age back, and it grows with age', (_name, mixture) => {
    fc.assert(
      fc.property(fc.double({ min: 50, max: 3500, noNaN: true }), (wanted) => {
        const at = ageOfMixtureStrength(mixture, psi(wanted))!;
        expect(mixtureStrength(mixture, at)).toBeCloseTo(wanted, 4);
        expect(mixtureStrength(mixture, hours(at + 1))).toBeGreaterThan(wanted);
      }),
    );
  });

  it('that it never has, has no age', () => {
    for (const mixture of [plain, accelerated, hyperbolic]) {
      expect(ageOfMixtureStrength(mixture, psi(4600))).toBeNull();
      expect(ageOfMixtureStrength(mixture, psi(0))).toBe(0);
    }
  });

  it('by a hyperbolic curve begins after its start', () => {
    expect(mixtureStrength(hyperbolic, hours(6))).toBe(0);
    // By hand: 4600 · 0.02 · 50 / (1 + 0.02 · 50) at 56 h.
    expect(mixtureStrength(hyperbolic, hours(56))).toBeCloseTo(2300, 6);
  });
});

const CHOICES: AgeMethodChoice[] = [
  { kind: 'cautious' },
  { kind: 'nurse-saul', datumC: -10 },
  { kind: 'nurse-saul', datumC: 0 },
  { kind: 'arrhenius', activationK: 5000 },
  { kind: 'fhp' },
  { kind: 'en1992' },
];

describe.each(CHOICES)('age by %j', (choice) => {
  const method = ageMethod(choice);
  const steady = (time: number, t: number) => steadyIntervals([hours(time)], [celsius(t)]);

  it('is the time itself at the reference; by the rounded figures of EN 1992 to a part in five hundred', () => {
    const most = choice.kind === 'en1992' ? 0.06 : 1e-9;
    expect(Math.abs(ageBy(method, steady(30, 20)) - 30)).toBeLessThan(most);
  });

  it('is the same when an interval is split', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -15, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (t, at) => {
          const split = steadyIntervals([hours(20 * at), hours(20 * (1 - at))], [celsius(t), celsius(t)]);
          expect(ageBy(method, split)).toBeCloseTo(ageBy(method, steady(20, t)), 9);
        },
      ),
    );
  });

  it('strictly grows above its datum and frozen concrete gains nothing', () => {
    expect(ageBy(method, steady(11, 5))).toBeGreaterThan(ageBy(method, steady(10, 5)));
    expect(ageBy(method, steady(500, -0.5))).toBe(0);
    expect(hoursUntil(method, [], hours(10), celsius(-0.5))).toBeNull();
  });

  it('is reached after the hours that are said', () => {
    const begun = steady(5, 10);
    const wait = hoursUntil(method, begun, hours(40), celsius(12))!;
    expect(ageBy(method, [...begun, ...steady(wait, 12)])).toBeCloseTo(40, 9);
  });

  it('names its method and its source', () => {
    expect(method.text).not.toBe('');
    expect(['P', 'M', 'C']).toContain(method.source.mark);
    expect(methodWords({ ...plain, age: choice })).toContain(method.text);
  });
});

describe('a choice of method', () => {
  it('defaults to the pair that counts least of all', () => {
    const cold = steadyIntervals([hours(10)], [celsius(3)]);
    const least = Math.min(...CHOICES.map((choice) => ageBy(ageMethod(choice), cold)));
    expect(ageBy(ageMethod(), cold)).toBe(least);
  });

  it('refuses figures that no mixture has', () => {
    expect(() => ageMethod({ kind: 'nurse-saul', datumC: 40 })).toThrow('give one of -20 to 10');
    expect(() => ageMethod({ kind: 'arrhenius', activationK: 5 })).toThrow('give one of 2000 to 9000');
  });
});

describe('second opinions', () => {
  it('invert: β_cc and Plowman give the age back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 400, noNaN: true }), (day) => {
        expect(ageOfBetaCc(betaCc(days(day), 0.25), 0.25)).toBeCloseTo(day, 6);
      }),
    );
    expect(plowmanPercent(plowmanFactor(60, 32, 54), 32, 54)).toBeCloseTo(60, 9);
  });

  it('have nothing at no age, and no age for what is never reached', () => {
    expect(betaCc(days(0), 0.25)).toBe(0);
    expect(ageOfBetaCc(0, 0.25)).toBe(0);
    expect(ageOfBetaCc(2, 0.25)).toBeNull();
    expect(plowmanPercent(plowmanFactor(0, 32, 54), 32, 54)).toBeCloseTo(0, 9);
  });

  it('take the fast class for every strong concrete', () => {
    expect(modelCodeS('32.5N', 61)).toBe(0.2);
    expect(modelCodeS('32.5N', 60)).toBe(0.38);
  });
});
