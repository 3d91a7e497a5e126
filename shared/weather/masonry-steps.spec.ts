import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { fahrenheit } from '../units/temperature.js';
import { milesPerHour } from '../units/weather-units.js';
import { masonrySteps } from './masonry-steps.js';

const ids = (air: number, wind: number | null) =>
  masonrySteps(fahrenheit(air), wind === null ? null : milesPerHour(wind)).map((step) => step.id);

describe('masonry steps', () => {
  it('asks for no less when it gets colder', () => {
    const anyAir = fc.integer({ min: -20, max: 40 });
    fc.assert(
      fc.property(anyAir, fc.integer({ min: 0, max: 40 }), (air, wind) => {
        expect(ids(air - 1, wind)).toEqual(expect.arrayContaining(ids(air, wind)));
      }),
    );
  });

  it('asks for no less when the wind rises', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 60 }), fc.integer({ min: 0, max: 40 }), (air, wind) => {
        expect(ids(air, wind + 1)).toEqual(expect.arrayContaining(ids(air, wind)));
      }),
    );
  });

  it('takes wind that nobody knows for strong wind', () => {
    expect(ids(24, null)).toEqual(ids(24, 30));
  });

  it('says each step in words', () => {
    for (const step of masonrySteps(fahrenheit(10), milesPerHour(20)))
      expect(step.text.length).toBeGreaterThan(10);
  });
});
