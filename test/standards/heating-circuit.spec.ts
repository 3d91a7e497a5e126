import { describe, expect, it } from '@jest/globals';
import { breakerCarries, continuousLoad, sizeCircuit } from '../../shared/heating/circuit.js';
import { loadCurrent } from '../../shared/heating/power.js';
import { amperes, volts, watts } from '../../shared/units/electrical.js';

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
