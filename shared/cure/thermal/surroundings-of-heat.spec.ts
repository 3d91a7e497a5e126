import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { milesPerHour } from '../../units/weather-units.js';
import { edgeFactor } from './edge-factor.js';
import { erfc } from './erfc.js';
import { CONCRETE } from './material.js';
import { filmResistance } from './surface-film.js';
import { solveTridiagonal } from './tridiagonal.js';

describe('the complementary error function', () => {
  // Published tables of the error function (Abramowitz and Stegun 1964, table 7.1).
  it.each([
    [0, 1],
    [0.5, 0.4795001222],
    [1, 0.1572992071],
    [1.9, 0.0072095708],
    [2, 0.004677735],
    [3, 0.0000220905],
  ])('of %p is %p', (x, expected) => {
    expect(Math.abs(erfc(x) - expected)).toBeLessThan(1e-9);
  });
});

describe('the film of air', () => {
  it('is thinner the more wind there is, and unknown wind is not calm', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (v, more) => {
          expect(filmResistance(milesPerHour(v + more))).toBeLessThanOrEqual(
            filmResistance(milesPerHour(v)) + 1e-12,
          );
        },
      ),
    );
    expect(filmResistance(null)).toBe(filmResistance(milesPerHour(15)));
  });
});

describe('an edge', () => {
  it('is colder than the face, a corner colder than an edge, and both the colder the longer', () => {
    const share = (exposure: 'face' | 'edge' | 'corner', time: number) =>
      edgeFactor(exposure, CONCRETE, time, 0.2);
    expect(share('face', 24)).toBe(1);
    expect(share('corner', 0)).toBe(1);
    for (const time of [1, 6, 24, 240]) {
      expect(share('edge', time)).toBeLessThan(1);
      expect(share('corner', time)).toBeCloseTo(share('edge', time) ** 2, 12);
      expect(share('edge', time * 2)).toBeLessThan(share('edge', time));
    }
  });

  it('is kept by blankets, and stays a share in a bare gale of months', () => {
    expect(edgeFactor('edge', CONCRETE, 24, 2)).toBeGreaterThan(edgeFactor('edge', CONCRETE, 24, 0.1));
    const bare = edgeFactor('corner', CONCRETE, 24 * 90, 0.001);
    expect(bare).toBeGreaterThan(0);
    expect(bare).toBeLessThan(0.001);
  });
});

describe('a tridiagonal system', () => {
  it('is solved: what comes out gives back the right side', () => {
    const number = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number, number), { minLength: 1, maxLength: 30 }), (rows) => {
        const lower = Float64Array.from(rows, ([a]) => a);
        const upper = Float64Array.from(rows, ([, b]) => b);
        const diagonal = Float64Array.from(rows, ([a, b]) => Math.abs(a) + Math.abs(b) + 1);
        const right = Float64Array.from(rows, ([, , c]) => c);
        const x = new Float64Array(rows.length);
        solveTridiagonal(lower, Float64Array.from(diagonal), upper, Float64Array.from(right), x);
        rows.forEach(([a, b, c], i) => {
          const sum =
            diagonal[i]! * x[i]! + (i > 0 ? a * x[i - 1]! : 0) + (i + 1 < rows.length ? b * x[i + 1]! : 0);
          expect(sum).toBeCloseTo(c, 8);
        });
      }),
    );
  });
});
