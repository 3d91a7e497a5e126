import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { amperes, ohms, volts, watts } from '../../units/electrical.js';
import { loadCurrent, loadResistance, offVoltagePower, powerAt } from './power.js';
import { breakerCarries, continuousLoad, sizeCircuit } from './size-circuit.js';
import { ampacity } from './tables/ampacity.js';
import { nextBreaker } from './tables/breakers.js';

describe('sizing a circuit', () => {
  it.each([
    [10, 15, 14],
    [12, 15, 14],
    [12.5, 20, 12],
    [16, 20, 12],
    [16.1, 25, 10],
    [24, 30, 10],
    [32, 40, 8],
    [44, 60, 6],
    [44.1, 60, 4],
    [64, 80, 3],
    [80, 100, 1],
    [88, 110, 1],
  ])('%p A takes a breaker of %p A and %p AWG', (load, breaker, conductorAwg) => {
    expect(sizeCircuit(amperes(load))).toMatchObject({ breaker, conductorAwg });
  });

  it('gives nothing where the tables here end: an electrician designs that', () => {
    expect(sizeCircuit(amperes(88.1))).toBeNull();
    expect(sizeCircuit(amperes(161))).toBeNull();
    expect(nextBreaker(amperes(200.1))).toBeNull();
    expect(ampacity(0, 60)).toBeNull();
  });

  it('takes a smaller conductor only where both terminals are rated for 75 °C', () => {
    expect(sizeCircuit(amperes(38), 60)).toMatchObject({ breaker: 50, conductorAwg: 6, terminals: 60 });
    expect(sizeCircuit(amperes(38), 75)).toMatchObject({ breaker: 50, conductorAwg: 8, terminals: 75 });
    // 240.4(D): 14 AWG carries 20 A in that column and still stands on 15 A at most.
    expect(sizeCircuit(amperes(15), 75)).toMatchObject({ breaker: 20, conductorAwg: 12 });
  });

  it('shows its source and defers to the electrician', () => {
    const size = sizeCircuit(amperes(12.5));
    expect(size?.source.text).toContain('426.4');
    expect(size?.caution).toContain('licensed electrician');
  });

  it('never protects a small wire above its limit (NEC 240.4(D): 14 at 15, 12 at 20, 10 at 30 A)', () => {
    const most: Record<number, number> = { 14: 15, 12: 20, 10: 30 };
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 88, noNaN: true }),
        fc.constantFrom(60, 75),
        (load, terminals) => {
          const size = sizeCircuit(amperes(load), terminals);
          expect(size).not.toBeNull();
          if (!size) return;
          expect(size.breaker).toBeLessThanOrEqual(most[size.conductorAwg] ?? 110);
          expect(ampacity(size.conductorAwg, size.terminals)).toBeGreaterThanOrEqual(size.design - 1e-9);
          expect(breakerCarries(size.load, size.breaker)).toBe(true);
        },
      ),
    );
  });

  it('counts a continuous load a quarter more', () => {
    expect(continuousLoad(amperes(40))).toBe(50);
    expect(breakerCarries(amperes(12.1), amperes(15))).toBe(false);
  });
});

describe('power', () => {
  it('comes back through the resistance', () => {
    fc.assert(
      fc.property(fc.double({ min: 50, max: 20_000, noNaN: true }), (power) => {
        expect(powerAt(loadResistance(watts(power), volts(240)), volts(240))).toBeCloseTo(power, 6);
      }),
    );
  });

  it('falls with the square of the voltage', () => {
    expect(offVoltagePower(watts(1000), volts(240), volts(120))).toBe(250);
    expect(powerAt(ohms(10), volts(20)) / powerAt(ohms(10), volts(10))).toBe(4);
  });

  it('draws its current at its voltage', () => {
    expect(loadCurrent(watts(2400), volts(240))).toBe(10);
  });
});
