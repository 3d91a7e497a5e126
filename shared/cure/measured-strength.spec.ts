import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { psi } from '../units/stress.js';
import { LONGEST_GAP_HOURS, measuredHistory } from './measured-history.js';
import { measuredStrength } from './measured-strength.js';
import { after, placementOf, PLACED, readingsAt, steadyReadings } from './testing/placement-fixture.js';

describe('strength on readings', () => {
  it('says that it is measured, by which method, from which source, with the caution', () => {
    const strength = measuredStrength(placementOf(), steadyReadings(24, 60), after(24));
    expect(strength).toMatchObject({
      basis: 'measured',
      asOf: after(24),
      required: 1000,
      gaps: [],
      source: { mark: 'M' },
    });
    expect(strength.method).toContain('Nurse–Saul (datum 0 °C)');
    expect(strength.method).toContain('Concrete, 4,000 psi');
    expect(strength.caution).toContain('estimate from temperature');
  });

  it('is none without a reading after placing', () => {
    const strength = measuredStrength(placementOf(), [], after(100));
    expect(strength).toMatchObject({ strength: 0, equivalentAge: 0, asOf: PLACED, reached: false });
  });

  it('reaches what is required once it has been warm long enough', () => {
    expect(measuredStrength(placementOf(), steadyReadings(18, 60), after(18)).reached).toBe(false);
    expect(measuredStrength(placementOf(), steadyReadings(36, 60), after(36)).reached).toBe(true);
  });

  it('does not go on after the last reading', () => {
    const readings = steadyReadings(24, 60);
    const then = measuredStrength(placementOf(), readings, after(24));
    expect(measuredStrength(placementOf(), readings, after(500))).toEqual(then);
  });

  it('does not use readings of the future or from before the placing', () => {
    const readings = steadyReadings(24, 60);
    const stray = readingsAt([-6, 90], [48, 90]);
    const with12 = measuredStrength(placementOf(), readings, after(12));
    expect(with12.asOf).toBe(after(12));
    expect(measuredStrength(placementOf(), [...stray, ...readings], after(24))).toEqual(
      measuredStrength(placementOf(), readings, after(24)),
    );
  });

  it('takes readings in any order', () => {
    const readings = readingsAt([6, 62], [12, 58], [18, 55], [24, 50]);
    const strength = measuredStrength(placementOf(), readings, after(24));
    expect(measuredStrength(placementOf(), [...readings].reverse(), after(24))).toEqual(strength);
  });

  it('takes two readings at one instant in the same way whatever their order, the colder on the way in', () => {
    const both = readingsAt([6, 70], [6, 40], [12, 50]);
    const turned = readingsAt([6, 40], [6, 70], [12, 50]);
    const points = measuredHistory(placementOf(), both, after(12)).points.map((point) => point.temperature);
    expect(points[1]).toBeLessThan(points[2] ?? 0);
    expect(measuredStrength(placementOf(), both, after(12))).toEqual(
      measuredStrength(placementOf(), turned, after(12)),
    );
  });

  it('counts a long stretch without a reading for nothing, and says where it is', () => {
    const readings = readingsAt([6, 60], [40, 60], [46, 60]);
    const strength = measuredStrength(placementOf(), readings, after(46));
    expect(strength.gaps).toEqual([{ from: after(6), to: after(40) }]);
    expect(strength.equivalentAge).toBe(
      measuredStrength(placementOf(), readingsAt([6, 60], [12, 60]), after(12)).equivalentAge,
    );
  });

  it('takes a stretch of just the longest', () => {
    const history = measuredHistory(placementOf(), readingsAt([LONGEST_GAP_HOURS, 60]), after(99));
    expect(history.gaps).toEqual([]);
    expect(history.intervals).toHaveLength(1);
  });

  it('is reached exactly at what is required', () => {
    const readings = steadyReadings(24, 60);
    const { strength } = measuredStrength(placementOf(), readings, after(24));
    expect(measuredStrength(placementOf({ required: strength }), readings, after(24)).reached).toBe(true);
    expect(measuredStrength(placementOf({ required: psi(strength + 1) }), readings, after(24)).reached).toBe(
      false,
    );
  });

  it('never falls as time goes on', () => {
    const temperatures = fc.array(fc.integer({ min: 10, max: 90 }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(temperatures, (given) => {
        const readings = readingsAt(...given.map((t, i): [number, number] => [(i + 1) * 6, t]));
        const strengths = given.map(
          (_, i) => measuredStrength(placementOf(), readings, after((i + 1) * 6)).strength,
        );
        strengths.slice(1).forEach((one, i) => expect(one).toBeGreaterThanOrEqual(strengths[i] ?? 0));
      }),
    );
  });

  it('is no less where every reading was warmer', () => {
    const temperatures = fc.array(fc.integer({ min: 10, max: 90 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(temperatures, (given) => {
        const at = (more: number) =>
          measuredStrength(
            placementOf(),
            readingsAt(...given.map((t, i): [number, number] => [(i + 1) * 6, t + more])),
            after(99),
          ).strength;
        expect(at(5)).toBeGreaterThanOrEqual(at(0));
      }),
    );
  });
});
