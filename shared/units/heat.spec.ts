import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { wattsPerSquareFoot } from './electrical.js';
import {
  conductance,
  heatFlux,
  inchesPerHour,
  toBtuPerCubicFoot,
  toBtuPerHourFoot,
  toHeatFlux,
  toWattsPerSquareFoot,
} from './heat.js';

describe('heat', () => {
  // Computed by hand: 3412.14 Btu/h to the kilowatt.
  it('of 3412.14 Btu/h·ft² is a kilowatt on the square foot', () => {
    expect(toWattsPerSquareFoot(heatFlux(3412.14))).toBeCloseTo(1000, 2);
  });

  it('comes back unchanged', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), (flux) => {
        expect(toHeatFlux(toWattsPerSquareFoot(heatFlux(flux)))).toBeCloseTo(flux, 9);
        expect(toWattsPerSquareFoot(toHeatFlux(wattsPerSquareFoot(flux)))).toBeCloseTo(flux, 9);
      }),
    );
  });

  // Computed by hand: 1 Btu is 1055.056 J, 1 ft 0.3048 m, 1 °F 5/9 K.
  it('passes and stays in materials by the same definitions', () => {
    expect(toBtuPerHourFoot(1)).toBeCloseTo((0.3048 * 3600 * 5) / 9 / 1055.056, 5);
    expect(toBtuPerCubicFoot(1e6)).toBeCloseTo((1e6 * 0.3048 ** 3 * 5) / 9 / 1055.056, 3);
  });

  it('is never without a number', () => {
    for (const make of [heatFlux, conductance, inchesPerHour]) {
      expect(() => make(Number.NaN)).toThrow('must be a finite number');
      expect(make(2)).toBe(2);
    }
  });
});
