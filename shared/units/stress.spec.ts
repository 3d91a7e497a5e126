import { describe, expect, it } from '@jest/globals';
import { megapascals, psi, toMegapascals, toPsi } from './stress.js';

describe('stress', () => {
  // 500 psi is 3.45 MPa, as ACI 306.1 prints the first-freeze strength.
  it('500 psi is 3.447 MPa', () => {
    expect(toMegapascals(psi(500))).toBeCloseTo(3.447, 3);
  });

  it('comes back as it went', () => {
    expect(toPsi(toMegapascals(psi(1234)))).toBeCloseTo(1234, 8);
    expect(toMegapascals(toPsi(megapascals(27.5)))).toBeCloseTo(27.5, 10);
  });
});
