import { describe, expect, it } from '@jest/globals';
import { breakerCarries, continuousLoad, sizeCircuit } from '../../shared/heating/circuit/size-circuit.js';
import { groundFault } from '../../shared/heating/circuit/ground-fault.js';
import { loadCurrent } from '../../shared/heating/circuit/power.js';
import { ampacity } from '../../shared/heating/circuit/tables/ampacity.js';
import {
  conductorResistance,
  perThousandFeet,
  type Strand,
} from '../../shared/heating/circuit/tables/conductor-resistance.js';
import { voltageDrop, voltageDropFinding } from '../../shared/heating/circuit/voltage-drop.js';
import { amperes, volts, watts } from '../../shared/units/electrical.js';
import { feet } from '../../shared/units/length.js';

// Source: published NEC 2017 worked example (newsletter 2089): 9600 W at 240 V plus a 3 A motor, 60 °C terminals.
describe('9600 W at 240 V plus a 3 A motor', () => {
  const load = amperes(loadCurrent(watts(9600), volts(240)) + 3);

  it('is 43 A, counted as 53.75 A', () => {
    expect(load).toBe(43);
    expect(continuousLoad(load)).toBe(53.75);
  });

  it('takes 6 AWG and a breaker of 60 A', () => {
    expect(sizeCircuit(load)).toMatchObject({ load: 43, design: 53.75, breaker: 60, conductorAwg: 6 });
  });
});

// Source: a trade magazine's code quiz 57 (published): 12 A of continuous load count as 15 A.
describe('12 A of continuous load', () => {
  it('counts as 15 A and stands on a breaker of 15 A', () => {
    expect(continuousLoad(amperes(12))).toBe(15);
    expect(breakerCarries(amperes(12), amperes(15))).toBe(true);
  });
});

// The trade's fact, no source: 16 A on a 15 A breaker is refused.
describe('16 A', () => {
  it('may not stand on a breaker of 15 A', () => {
    expect(breakerCarries(amperes(16), amperes(15))).toBe(false);
  });

  it('takes 20 A', () => {
    expect(sizeCircuit(amperes(16))).toMatchObject({ breaker: 20, conductorAwg: 12 });
  });
});

// Source: a trade site's worked example (published): 16 AWG at 4.99 Ω in a thousand feet, 100 ft, 4 A.
describe('voltage drop there and back', () => {
  it('of 16 AWG over 100 ft at 4 A is 3.99 V', () => {
    expect(voltageDrop(feet(100), amperes(4), perThousandFeet(4.99))).toBeCloseTo(3.99, 2);
  });

  // Published worked example, and one computed by hand.
  it.each<[number, Strand, number, number, number, number, boolean]>([
    [12, 'solid', 100, 120, 7.72, 6.43, false],
    [10, 'stranded', 120, 240, 5.952, 2.48, true],
  ])(
    '%p AWG %s over %p ft at 20 A and %p V is %p V, %p %%',
    (awg, strand, length, supply, lost, share, ok) => {
      const found = voltageDrop(feet(length), amperes(20), conductorResistance(awg, strand));
      expect(found).toBeCloseTo(lost, 3);
      expect((found / supply) * 100).toBeCloseTo(share, 2);
      expect(voltageDropFinding(found, volts(supply)).ok).toBe(ok);
    },
  );
});

// Source: NEC chapter 9, Table 8 (published), copper at 75 °C, ohms in a thousand feet.
describe('NEC chapter 9, Table 8', () => {
  it.each<[Strand, number, number]>([
    ['stranded', 14, 3.14],
    ['stranded', 12, 1.98],
    ['stranded', 10, 1.24],
    ['stranded', 8, 0.778],
    ['stranded', 6, 0.491],
    ['stranded', 4, 0.308],
    ['solid', 14, 3.07],
    ['solid', 12, 1.93],
    ['solid', 10, 1.21],
    ['solid', 8, 0.764],
  ])('%s %p AWG has %p Ω', (strand, awg, listed) => {
    expect(conductorResistance(awg, strand) * 1000).toBeCloseTo(listed, 9);
  });
});

// Source: NEC Table 310.16 (published), copper. The older 20 and 25 A at 60 °C for 14 and 12 AWG are wrong today.
describe('NEC Table 310.16', () => {
  it.each([
    [14, 15, 20],
    [12, 20, 25],
    [10, 30, 35],
    [8, 40, 50],
    [6, 55, 65],
  ])('%p AWG carries %p A at 60 °C and %p A at 75 °C', (awg, at60, at75) => {
    expect(ampacity(awg, 60)).toBe(at60);
    expect(ampacity(awg, 75)).toBe(at75);
  });
});

// Source: NEC 426.28 (published); the exception stood in older editions.
describe('NEC 426.28', () => {
  it('asks for protection of equipment, and 5 mA for people is not it', () => {
    expect(groundFault({ device: 'equipment' })).toMatchObject({ ok: true, source: { mark: 'P' } });
    expect(groundFault({ device: 'people' }).ok).toBe(false);
    expect(groundFault({ device: 'none' }).ok).toBe(false);
  });

  it.each([
    [true, true, true],
    [true, false, false],
    [false, true, false],
  ])('mineral-insulated in noncombustible %p, older edition %p: %p', (mineral, older, ok) => {
    const facts = { device: 'none' as const, mineralInsulatedInNoncombustible: mineral, olderEdition: older };
    expect(groundFault(facts).ok).toBe(ok);
  });
});
