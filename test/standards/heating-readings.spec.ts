import { describe, expect, it } from '@jest/globals';
import { insulationFinding } from '../../shared/heating/insulation-finding.js';
import { resistanceFinding } from '../../shared/heating/resistance-finding.js';
import { resistanceWindow } from '../../shared/heating/resistance-window.js';
import { COPPER_AT_75, resistanceAt } from '../../shared/heating/resistance.js';
import { megaohms, ohms, ohmsPerFoot, volts } from '../../shared/units/electrical.js';
import { feet } from '../../shared/units/length.js';
import { celsius, fahrenheit, toFahrenheit } from '../../shared/units/temperature.js';
import { epochMs } from '../../shared/units/time.js';

const label = {
  ohms: ohms(19.2),
  labelTemperature: fahrenheit(68),
  temperatureCoefficient: 0,
  toleranceLow: -0.05,
  toleranceHigh: 0.1,
  coldLeadLength: feet(25),
  coldLeadOhmsPerFoot: ohmsPerFoot(0),
  minInsulation: megaohms(20),
  insulationTestVolts: volts(500),
};
const reading = (resistance: number, insulation: number) => ({
  stage: 'laid' as const,
  areaKey: 'landing',
  at: epochMs(0),
  ohms: ohms(resistance),
  megaohms: megaohms(insulation),
  testVolts: volts(500),
  cableTemperature: fahrenheit(68),
});

// From memory: IEC 60800, −5/+10 % of the label.
describe('resistance window of a 19.2 Ω label', () => {
  it('runs from 18.24 to 21.12 Ω', () => {
    const { low, high } = resistanceWindow(label);
    expect(low).toBeCloseTo(18.24, 10);
    expect(high).toBeCloseTo(21.12, 10);
  });

  it.each([
    [18.23, false],
    [18.24, true],
    [19.2, true],
    [21.12, true],
    [21.13, false],
  ])('%p Ω: %p', (resistance, ok) => {
    const finding = resistanceFinding(label, reading(resistance, 100));
    expect(finding.ok).toBe(ok);
    expect(finding.source.mark).toBe('M');
  });
});

// Published in part, IEEE 515.1 from memory: at least 20 MΩ.
describe('insulation', () => {
  it.each([
    [19.9, false],
    [20, true],
  ])('%p MΩ: %p', (insulation, ok) => {
    expect(insulationFinding(label, reading(19.2, insulation)).ok).toBe(ok);
  });
});

// Published as "about 82 %"; the four digits computed by hand from the coefficient of copper at 75 °C.
describe('copper from 75 to 20 °C', () => {
  it('keeps 0.8224 of its resistance', () => {
    const cold = resistanceAt(ohms(1), toFahrenheit(celsius(75)), toFahrenheit(celsius(20)), COPPER_AT_75);
    expect(cold).toBeCloseTo(0.8224, 4);
  });
});
