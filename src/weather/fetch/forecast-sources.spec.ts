import { describe, expect, it } from '@jest/globals';
import { ForecastSource } from '../../generated/prisma/enums.js';
import { shortDegrees } from './degrees.js';
import { demandOneSourceEach } from './forecast-sources.js';

describe('the sources', () => {
  const all = Object.values(ForecastSource).map((kind) => ({ kind }));

  it('are one for each kind', () => {
    expect(() => demandOneSourceEach(all)).not.toThrow();
  });

  it.each(Object.values(ForecastSource))('are refused with %s left out, or twice', (kind) => {
    expect(() => demandOneSourceEach(all.filter((one) => one.kind !== kind))).toThrow(
      `the kind "${kind}" has 0 sources instead of one`,
    );
    expect(() => demandOneSourceEach([...all, { kind }])).toThrow(
      `the kind "${kind}" has 2 sources instead of one`,
    );
  });
});

describe('degrees in an address', () => {
  it.each([
    [42.5, '42.5'],
    [-73.25004, '-73.25'],
    [-73.250051, '-73.2501'],
    [40, '40'],
    [0, '0'],
    [-0.00001, '0'],
    [100, '100'],
  ])('%p is written %s', (degrees, text) => {
    expect(shortDegrees(degrees, 4)).toBe(text);
  });
});
