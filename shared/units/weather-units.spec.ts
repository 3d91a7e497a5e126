import { describe, expect, it } from '@jest/globals';
import { fromKilometresPerHour, fromKnots, fromMetresPerSecond, fromMillimetres } from './weather-units.js';

describe('weather units', () => {
  it('100 km/h are 62.137 mph', () => {
    expect(fromKilometresPerHour(100)).toBeCloseTo(62.137, 3);
  });

  it('10 m/s are 22.369 mph', () => {
    expect(fromMetresPerSecond(10)).toBeCloseTo(22.369, 3);
  });

  it('10 m/s and 36 km/h are one speed', () => {
    expect(fromMetresPerSecond(10)).toBeCloseTo(fromKilometresPerHour(36), 10);
  });

  // A knot is 1.852 km/h and a mile 1.609344 km, both exact by definition (NIST SP 811).
  it('10 knots are 11.508 mph', () => {
    expect(fromKnots(10)).toBeCloseTo(11.508, 3);
  });

  it('25.4 mm are an inch', () => {
    expect(fromMillimetres(25.4)).toBe(1);
  });
});
