import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { ohms, ohmsPerFoot } from '../units/electrical.js';
import { feet } from '../units/length.js';
import { fahrenheit } from '../units/temperature.js';
import { leadResistance, resistanceAt } from './resistance.js';
import { resistanceAtLabel, resistanceWindow } from './resistance-window.js';
import { labelOf, readingOf } from './testing/set-fixture.js';

describe('resistance and temperature', () => {
  it('does not move without a coefficient or without a difference', () => {
    expect(resistanceAt(ohms(10), fahrenheit(68), fahrenheit(-40), 0)).toBe(10);
    expect(resistanceAt(ohms(10), fahrenheit(68), fahrenheit(68), 0.004)).toBe(10);
  });

  it('counts the coefficient per kelvin: 18 °F are 10 of them', () => {
    expect(resistanceAt(ohms(10), fahrenheit(68), fahrenheit(86), 0.004)).toBeCloseTo(10.4, 10);
  });

  it('grows with temperature', () => {
    fc.assert(
      fc.property(fc.integer({ min: -40, max: 140 }), (t) => {
        const now = resistanceAt(ohms(10), fahrenheit(68), fahrenheit(t), 0.004);
        expect(resistanceAt(ohms(10), fahrenheit(68), fahrenheit(t + 1), 0.004)).toBeGreaterThan(now);
      }),
    );
  });
});

describe('a cold lead', () => {
  it('has two conductors', () => {
    expect(leadResistance(feet(100), ohmsPerFoot(0.002))).toBeCloseTo(0.4, 10);
  });
});

describe('the window of a label', () => {
  it('lies around the label by its tolerance', () => {
    const { low, high } = resistanceWindow(labelOf({ toleranceLow: -0.1, toleranceHigh: 0.05 }));
    expect(low).toBeCloseTo(17.28, 10);
    expect(high).toBeCloseTo(20.16, 10);
  });

  it('is held against the cable alone', () => {
    const label = labelOf({ coldLeadOhmsPerFoot: ohmsPerFoot(0.01) });
    expect(resistanceAtLabel(label, readingOf({ ohms: ohms(19.7) }))).toBeCloseTo(19.2, 10);
  });
});
