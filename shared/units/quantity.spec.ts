import { describe, expect, it } from '@jest/globals';
import { feet, inches, toFeet, toInches, type Feet, type Inches } from './length.js';
import { quantity } from './quantity.js';
import { fahrenheit, fahrenheitDegrees, toCelsius, type Celsius } from './temperature.js';
import { megaohms, ohms, type Ohms } from './electrical.js';

describe('a quantity', () => {
  it.each([NaN, Infinity, -Infinity])('refuses %p', (value) => {
    expect(() => quantity(value, 'in')).toThrow(`in must be a finite number, got ${value}`);
  });

  it('is its number at run time, so JSON carries it', () => {
    expect(JSON.stringify({ length: feet(5) })).toBe('{"length":5}');
  });
});

/** Each line marked as an error must be one: the type checker fails on a mark that is not needed. */
describe('a mix-up of units', () => {
  const wantsInches = (length: Inches): number => length;
  const wantsFeet = (length: Feet): number => length;
  const wantsCelsius = (t: Celsius): number => t;
  const wantsOhms = (r: Ohms): number => r;

  it('does not compile for lengths', () => {
    // @ts-expect-error feet are no inches
    expect(wantsInches(feet(1))).toBe(1);
    // @ts-expect-error inches are no feet
    expect(wantsFeet(inches(1))).toBe(1);
    // @ts-expect-error a bare number has no unit
    expect(wantsFeet(1)).toBe(1);
  });

  it('does not compile for temperatures and their differences', () => {
    // @ts-expect-error °F are no °C
    expect(wantsCelsius(fahrenheit(32))).toBe(32);
    // @ts-expect-error a difference is no temperature
    expect(toCelsius(fahrenheitDegrees(50))).toBeCloseTo(10, 10);
  });

  it('does not compile for ohms and megohms', () => {
    // @ts-expect-error megohms are no ohms
    expect(wantsOhms(megaohms(20))).toBe(20);
    expect(wantsOhms(ohms(20))).toBe(20);
  });

  it('is not needed where a conversion stands', () => {
    expect(wantsInches(toInches(feet(1)))).toBe(12);
    expect(wantsFeet(toFeet(inches(6)))).toBe(0.5);
  });

  it('cannot hide in a sum: adding two quantities gives a bare number', () => {
    // @ts-expect-error a sum has to be given its unit again
    expect(wantsInches(inches(1) + inches(2))).toBe(3);
    expect(wantsInches(inches(inches(1) + inches(2)))).toBe(3);
  });
});
