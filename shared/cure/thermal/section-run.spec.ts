import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { celsius } from '../../units/temperature.js';
import { ordinaryHeat } from '../hydration/hydration-heat.js';
import { CONCRETE, MORTAR, SOIL } from './material.js';
import type { Section } from './section.js';
import { SectionRun } from './section-run.js';

const concrete = (thickness: number, cells = 12, start = 15, heat = true): Section => ({
  layers: [
    { thickness, material: CONCRETE, cells, start: celsius(start), heat: heat ? ordinaryHeat(300) : null },
  ],
  placed: 0,
  below: 'insulated',
});
const onGround = (thickness: number): Section => ({
  layers: [
    ...concrete(thickness).layers,
    { thickness: 1, material: SOIL, cells: 6, start: celsius(4), heat: null },
  ],
  placed: 0,
  below: 'ground',
});
const GROUND = { temperature: 4, resistance: 0 };

const run = (section: Section, air: readonly number[], resistance: number, seconds = 1800): SectionRun => {
  const made = new SectionRun(section);
  for (const temperature of air) made.step(seconds, { temperature, resistance }, GROUND);
  return made;
};

const airs = fc.array(fc.double({ min: -25, max: 25, noNaN: true }), { minLength: 1, maxLength: 60 });
const thickness = fc.double({ min: 0.03, max: 1, noNaN: true });
const resistance = fc.double({ min: 0.03, max: 3, noNaN: true });

describe('a section', () => {
  it('loses no heat: its balance closes within 0.1 % whatever the air, the step and the blankets', () => {
    const step = fc.constantFrom(60, 300, 3600, 6 * 3600);
    fc.assert(
      fc.property(airs, thickness, resistance, step, (air, thick, r, seconds) => {
        const { error, stored, hydration, throughTop, throughBottom } = run(
          onGround(thick),
          air,
          r,
          seconds,
        ).balance();
        expect(error).toBeLessThan(1e-3);
        expect(stored).toBeCloseTo(hydration + throughTop + throughBottom, 0);
      }),
    );
  });

  it('balances also where a measured temperature was taken over', () => {
    const made = run(onGround(0.25), [0, -5, -5], 0.2);
    made.takeOver(12);
    expect(made.coldest).toBeCloseTo(12, 9);
    made.step(1800, { temperature: -5, resistance: 0.2 }, GROUND);
    const balance = made.balance();
    expect(balance.takenOver).not.toBe(0);
    expect(balance.error).toBeLessThan(1e-9);
  });

  it('stays between its start and its surroundings when it makes no heat, at any step', () => {
    fc.assert(
      fc.property(thickness, resistance, fc.integer({ min: 1, max: 10_000_000 }), (thick, r, seconds) => {
        const made = run(concrete(thick, 12, 15, false), [-10, -10, -10], r, seconds);
        for (const temperature of made.temperatures) {
          expect(temperature).toBeGreaterThanOrEqual(-10 - 1e-9);
          expect(temperature).toBeLessThanOrEqual(15 + 1e-9);
        }
      }),
    );
  });

  it('is never cooled by more insulation in air colder than itself', () => {
    fc.assert(
      fc.property(thickness, resistance, fc.double({ min: 0, max: 3, noNaN: true }), (thick, r, more) => {
        const air = Array.from({ length: 48 }, (_, i) => -10 - (i % 7));
        const bare = run(concrete(thick), air, r);
        const covered = run(concrete(thick), air, r + more);
        expect(covered.coldest).toBeGreaterThanOrEqual(bare.coldest - 1e-9);
        expect(covered.centre).toBeGreaterThanOrEqual(bare.centre - 1e-9);
      }),
    );
  });

  it('does not stay warmer when it is thinner', () => {
    fc.assert(
      fc.property(thickness, resistance, fc.double({ min: 0.3, max: 1, noNaN: true }), (thick, r, share) => {
        const air = Array.from({ length: 48 }, () => -10);
        const whole = run(concrete(thick, 12, 15, false), air, r);
        const thin = run(concrete(thick * share, 12, 15, false), air, r);
        expect(thin.centre).toBeLessThanOrEqual(whole.centre + 1e-6);
      }),
    );
  });

  it('comes to the air of an enclosure when it is heated long enough', () => {
    const made = run(
      concrete(0.1, 6, -5, false),
      Array.from({ length: 400 }, () => 20),
      0.2,
      3600,
    );
    expect(made.coldest).toBeCloseTo(20, 3);
  });

  it('shares its heat of hydration with nobody when nothing passes its faces', () => {
    const heat = ordinaryHeat(300);
    const made = run(
      concrete(0.2),
      Array.from({ length: 2000 }, () => 15),
      1e9,
      3600,
    );
    const rise = (heat.hydration.ultimate * 450_000 * 300) / (CONCRETE.density * CONCRETE.specificHeat);
    expect(made.centre - 15).toBeGreaterThan(0.97 * rise);
    expect(made.centre - 15).toBeLessThan(rise);
  });

  it('gives the same with steps of 1 and of 30 minutes to half a degree', () => {
    const air = (count: number) => Array.from({ length: count }, () => -8);
    const fine = run(onGround(0.25), air(24 * 60), 0.3, 60);
    const coarse = run(onGround(0.25), air(48), 0.3, 1800);
    expect(Math.abs(fine.centre - coarse.centre)).toBeLessThan(0.5);
    expect(Math.abs(fine.coldest - coarse.coldest)).toBeLessThan(0.5);
  });

  it('of a mortar bed cools through faster than a footing', () => {
    const bed: Section = {
      ...concrete(0.04),
      layers: [{ ...concrete(0.04).layers[0]!, material: MORTAR }],
    };
    const air = Array.from({ length: 12 }, () => -8);
    expect(run(bed, air, 0.1).centre).toBeLessThan(run(concrete(0.25), air, 0.1).centre);
  });

  it('wants layers with a thickness, and one that was placed', () => {
    expect(() => new SectionRun(concrete(0))).toThrow('thickness over 0 m');
    expect(() => new SectionRun(concrete(0.1, 0))).toThrow('one cell at least');
    expect(() => new SectionRun({ ...concrete(0.1), placed: 1 })).toThrow('No layer 1');
  });
});
