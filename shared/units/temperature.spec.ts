import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  celsius,
  celsiusDegrees,
  degreesBetween,
  differenceToCelsius,
  differenceToFahrenheit,
  fahrenheit,
  fahrenheitDegrees,
  toCelsius,
  toFahrenheit,
  toKelvin,
} from './temperature.js';

const anyTemperature = fc.double({ min: -100, max: 200, noNaN: true });

describe('temperatures', () => {
  it.each([
    [32, 0],
    [212, 100],
    [-40, -40],
    [50, 10],
  ])('%p °F is %p °C', (f, c) => {
    expect(toCelsius(fahrenheit(f))).toBeCloseTo(c, 10);
    expect(toFahrenheit(celsius(c))).toBeCloseTo(f, 10);
  });

  it('0 °C is 273.15 K', () => {
    expect(toKelvin(celsius(0))).toBe(273.15);
  });

  it('come back from °C as they went', () => {
    fc.assert(
      fc.property(anyTemperature, (f) => {
        expect(toFahrenheit(toCelsius(fahrenheit(f)))).toBeCloseTo(f, 8);
      }),
    );
  });
});

describe('differences', () => {
  // Computed by hand: 50 · 5/9.
  it('50 °F apart is 27.8 °C apart, not 10', () => {
    expect(differenceToCelsius(fahrenheitDegrees(50))).toBeCloseTo(27.8, 1);
  });

  it('come back as they went', () => {
    fc.assert(
      fc.property(anyTemperature, (d) => {
        expect(differenceToFahrenheit(celsiusDegrees(differenceToCelsius(fahrenheitDegrees(d))))).toBeCloseTo(
          d,
          8,
        );
      }),
    );
  });

  it('are the same whether taken before or after converting', () => {
    fc.assert(
      fc.property(anyTemperature, anyTemperature, (a, b) => {
        const inFahrenheit = differenceToCelsius(degreesBetween(fahrenheit(a), fahrenheit(b)));
        expect(inFahrenheit).toBeCloseTo(toCelsius(fahrenheit(b)) - toCelsius(fahrenheit(a)), 8);
      }),
    );
  });
});
