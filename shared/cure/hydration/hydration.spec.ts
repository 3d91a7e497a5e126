import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { celsius } from '../../units/temperature.js';
import { adiabatic } from './adiabatic.js';
import { affinityRate, affinityStep, type Affinity } from './affinity.js';
import { ordinaryHeat } from './hydration-heat.js';
import { degreeOfHydration } from './hydration.js';

const heat = ordinaryHeat(300);
const form: Affinity = {
  b1: 3e-4,
  b2: 1e-3,
  eta: 6,
  ultimate: 0.85,
  activation: 38_300,
  reference: celsius(25),
};

describe('hydration', () => {
  it('begins with nothing, never goes back, never passes its end', () => {
    expect(degreeOfHydration(heat.hydration, 0)).toBe(0);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5000, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (t, more) => {
          const [now, then] = [t, t + more].map((age) => degreeOfHydration(heat.hydration, age));
          expect(then).toBeGreaterThanOrEqual(now!);
          expect(then).toBeLessThanOrEqual(heat.hydration.ultimate);
        },
      ),
    );
  });

  it('by affinity stays in its bounds at any step', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.85, noNaN: true }),
        fc.integer({ min: 1, max: 1e8 }),
        (degree, seconds) => {
          const next = affinityStep(form, degree, seconds, () => celsius(10));
          expect(next).toBeGreaterThanOrEqual(degree - 1e-12);
          expect(next).toBeLessThanOrEqual(form.ultimate);
        },
      ),
    );
  });

  it('by affinity is slower in the cold, and rests when it is done', () => {
    expect(affinityRate(form, 0.2, celsius(5))).toBeLessThan(affinityRate(form, 0.2, celsius(25)));
    expect(affinityRate(form, form.ultimate, celsius(25))).toBe(0);
  });

  it('without loss of heat warms what it is in, the cold sort more slowly', () => {
    const after = (start: number) => adiabatic(heat, celsius(start), 2_350_000, 240, 0.1).temperature - start;
    expect(after(5)).toBeGreaterThan(0);
    expect(after(5)).toBeLessThan(after(20));
  });
});
