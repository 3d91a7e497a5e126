import { describe, expect, it } from '@jest/globals';
import { loadCurrent, loadResistance, offVoltagePower, powerAt } from '../../shared/heating/circuit/power.js';
import { ohms, volts, watts } from '../../shared/units/electrical.js';

// Computed by hand from P = V²/R.
describe('3000 W at 240 V', () => {
  const set = watts(3000);
  const rated = volts(240);

  it('is 19.2 Ω and 12.5 A', () => {
    expect(loadResistance(set, rated)).toBeCloseTo(19.2, 10);
    expect(loadCurrent(set, rated)).toBeCloseTo(12.5, 10);
  });

  it('gives 2253.3 W at 208 V', () => {
    expect(offVoltagePower(set, rated, volts(208))).toBeCloseTo(2253.3, 1);
    expect(offVoltagePower(watts(1), rated, volts(208))).toBeCloseTo(0.7511, 4);
  });

  it('loses 9.09 % of power with 10 % more resistance', () => {
    expect(powerAt(ohms(19.2 * 1.1), rated) / 3000 - 1).toBeCloseTo(-0.0909, 4);
  });

  it('gains 5.26 % of power with 5 % less resistance', () => {
    expect(powerAt(ohms(19.2 * 0.95), rated) / 3000 - 1).toBeCloseTo(0.0526, 4);
  });
});
