import { describe, expect, it } from '@jest/globals';
import { rValue, squareMetreKelvinPerWatt, toSquareMetreKelvinPerWatt } from './insulation.js';

describe('thermal resistance', () => {
  // Computed by hand: (1/1055.05585 J/Btu)·3600 s/h·0.09290304 m²/ft²·(5/9) K/°F, the inverse of the product.
  it('R 1 is 0.1761 m²·K/W', () => {
    const byHand = (3600 * 0.09290304 * (5 / 9)) / 1055.05585;
    expect(toSquareMetreKelvinPerWatt(rValue(1))).toBeCloseTo(byHand, 6);
  });

  it('adds up as its layers do', () => {
    const two = toSquareMetreKelvinPerWatt(rValue(8));
    expect(two).toBeCloseTo(2 * toSquareMetreKelvinPerWatt(rValue(4)), 12);
  });

  it('refuses what is no number', () => {
    expect(() => rValue(NaN)).toThrow('h·ft²·°F/Btu must be a finite number');
    expect(() => squareMetreKelvinPerWatt(Infinity)).toThrow('m²·K/W must be a finite number');
  });
});
