import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  cubicFeet,
  feet,
  inches,
  layer,
  rectangle,
  squareFeet,
  toCubicYards,
  toFeet,
  toInches,
} from './length.js';

describe('lengths, areas, volumes', () => {
  it('12 in are a foot', () => {
    expect(toFeet(inches(12))).toBe(1);
    expect(toInches(feet(4))).toBe(48);
  });

  it('5 by 11 ft are 55 ft²', () => {
    expect(rectangle(feet(5), feet(11))).toBe(55);
  });

  it('a layer of 12 in over an area has as many cubic feet as square feet', () => {
    expect(layer(squareFeet(40), inches(12))).toBe(40);
    expect(layer(squareFeet(40), inches(3))).toBe(10);
  });

  it('27 ft³ are a cubic yard', () => {
    expect(toCubicYards(cubicFeet(27))).toBe(1);
  });

  it('feet and inches come back as they went', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e4, noNaN: true }), (length) => {
        expect(toFeet(toInches(feet(length)))).toBeCloseTo(length, 8);
      }),
    );
  });
});
