import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  fromWattsPerSquareMetre,
  lengthForSpacing,
  powerDensity,
  spacingForDensity,
  spacingForLength,
  watts,
  wattsPerFoot,
  wattsPerSquareFoot,
} from './electrical.js';
import { feet, squareFeet } from './length.js';

describe('power and spacing', () => {
  it('3000 W over 100 ft² are 30 W/ft²', () => {
    expect(powerDensity(watts(3000), squareFeet(100))).toBe(30);
  });

  it('1 W/m² is 0.0929 W/ft²', () => {
    expect(fromWattsPerSquareMetre(1)).toBeCloseTo(0.0929, 4);
  });

  it('spacing by density and by length agree for one set', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 600, noNaN: true }),
        fc.double({ min: 10, max: 600, noNaN: true }),
        fc.double({ min: 3, max: 20, noNaN: true }),
        (area, length, perFoot) => {
          const density = wattsPerSquareFoot((perFoot * length) / area);
          const byLength = spacingForLength(squareFeet(area), feet(length));
          expect(spacingForDensity(wattsPerFoot(perFoot), density)).toBeCloseTo(byLength, 6);
        },
      ),
    );
  });

  it('the length for a spacing has that spacing', () => {
    const area = squareFeet(60);
    const length = lengthForSpacing(area, spacingForLength(area, feet(240)));
    expect(length).toBeCloseTo(240, 8);
  });
});
