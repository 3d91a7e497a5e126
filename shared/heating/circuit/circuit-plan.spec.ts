import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { amperes, ohmsPerFoot, volts, watts } from '../../units/electrical.js';
import { feet } from '../../units/length.js';
import { celsius, toFahrenheit } from '../../units/temperature.js';
import { CIRCUIT_CHECKLIST } from './circuit-checklist.js';
import { planCircuits, type SetLoad, type Supply } from './circuit-plan.js';
import { groundFault } from './ground-fault.js';
import { offVoltage } from './off-voltage.js';
import { panelLoad } from './panel-load.js';
import { conductorResistance } from './tables/conductor-resistance.js';
import { voltageDrop, voltageDropFinding } from './voltage-drop.js';

const set = (key: string, power: number, more: Partial<SetLoad> = {}): SetLoad => ({
  key,
  name: key.toUpperCase(),
  watts: watts(power),
  volts: volts(240),
  coldLead: feet(25),
  coldLeadOhmsPerFoot: ohmsPerFoot(0),
  ...more,
});
const house: Supply = { volts: volts(240), terminals: 60, panel: null };

describe('circuits of an entry', () => {
  it('are one for each zone, and one for each set that no zone names', () => {
    const sets = [set('a', 3000), set('b', 1800), set('c', 1200)];
    const plan = planCircuits(sets, [{ key: 'walk', sets: ['b', 'c'] }], house);
    expect(plan.zones).toMatchObject([
      { zone: 'walk', sets: ['b', 'c'], watts: 3000, load: 12.5, size: { breaker: 20, conductorAwg: 12 } },
      { zone: 'a', sets: ['a'], watts: 3000, load: 12.5 },
    ]);
    expect(plan.load).toBe(25);
    expect(plan.panel).toBeNull();
  });

  it('carry every set once, whatever the zones', () => {
    const sizes = fc.array(fc.integer({ min: 100, max: 6000 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(sizes, fc.nat({ max: 8 }), (powers, cut) => {
        const sets = powers.map((power, i) => set(`s${i}`, power));
        const zone = { key: 'z', sets: sets.slice(0, cut).map(({ key }) => key) };
        const plan = planCircuits(sets, zone.sets.length > 0 ? [zone] : [], house);
        expect(plan.zones.flatMap((one) => one.sets).sort()).toEqual(sets.map(({ key }) => key).sort());
        expect(plan.load).toBeCloseTo(powers.reduce((sum, power) => sum + power, 0) / 240, 9);
      }),
    );
  });

  it('warn of a set for another voltage and count the power that it then has', () => {
    const [zone] = planCircuits([set('a', 3000)], [], { ...house, volts: volts(208) }).zones;
    expect(zone?.watts).toBeCloseTo(2253.3, 1);
    expect(zone?.load).toBeCloseTo(10.83, 2);
    expect(zone?.findings).toMatchObject([{ rule: 'off-voltage', ok: false }]);
    expect(zone?.findings[0]?.text).toBe(
      'A: On 208 V the set gives 2253 W instead of 3000 W: too little heat. Take a set for 208 V',
    );
  });

  it('judge the cold lead where its resistance is known', () => {
    const lead = set('a', 3000, { coldLead: feet(180), coldLeadOhmsPerFoot: ohmsPerFoot(0.00198) });
    const [zone] = planCircuits([lead], [], house).zones;
    expect(zone?.findings.map(({ rule, ok }) => [rule, ok])).toEqual([
      ['off-voltage', true],
      ['voltage-drop', false],
    ]);
  });

  it('belong to a designer where the tables end', () => {
    const plan = planCircuits([set('a', 22_000)], [], house);
    expect(plan.zones[0]?.size).toBeNull();
  });

  it.each([
    [[{ key: 'z', sets: ['x'] }], 'there is no heating set "x"'],
    [
      [
        { key: 'z', sets: ['a'] },
        { key: 'y', sets: ['a'] },
      ],
      '"a" stands in two zones',
    ],
  ])('are refused for zones that cannot be (%#)', (zones, message) => {
    expect(() => planCircuits([set('a', 3000)], zones, house)).toThrow(message);
  });

  it('together fit the panel or say by how much they do not', () => {
    const panel = { main: amperes(100), carried: amperes(70) };
    const sets = [set('a', 3000), set('b', 3000)];
    const tight = planCircuits(sets, [], { ...house, panel }).panel;
    expect(tight).toMatchObject({ ok: false, measured: '101.25 A: 70 A carried and 31.25 A for heating' });
    expect(tight?.text).toContain('1.25 A short');
    expect(panelLoad({ main: amperes(100), carried: amperes(68.75) }, amperes(25)).ok).toBe(true);
  });
});

describe('a set on another voltage', () => {
  const label = { watts: watts(3000), volts: volts(208) };

  it.each([
    [208, true],
    [218.4, true],
    [197.6, true],
    [219, false],
    [197, false],
  ])('%p V: %p', (supply, ok) => {
    expect(offVoltage(label, volts(supply)).ok).toBe(ok);
  });

  it('of more than its own is never connected', () => {
    expect(offVoltage(label, volts(240)).text).toContain('it overheats. Do not connect it');
  });
});

describe('voltage drop', () => {
  it('grows with length, load and resistance', () => {
    expect(voltageDrop(feet(50), amperes(10), ohmsPerFoot(0.002))).toBe(2);
  });

  it('may be 3 % and no more', () => {
    expect(voltageDropFinding(volts(7.2), volts(240)).ok).toBe(true);
    expect(voltageDropFinding(volts(7.21), volts(240))).toMatchObject({
      ok: false,
      measured: '7.21 V, 3.004 % of 240 V',
    });
  });

  it('is smaller in a cold lead', () => {
    const cold = conductorResistance(12, 'stranded', toFahrenheit(celsius(20)));
    expect(cold / conductorResistance(12, 'stranded')).toBeCloseTo(0.82235, 6);
  });

  it('is not guessed for a size that no table has', () => {
    expect(() => conductorResistance(13, 'solid')).toThrow(
      'no solid copper of 13 AWG is in the table; it has 18, 16',
    );
  });
});

describe('what an electrician confirms', () => {
  it('names disconnect, protection of equipment, marking and free length once each, with sources', () => {
    const keys = CIRCUIT_CHECKLIST.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys).toEqual(
      expect.arrayContaining(['disconnect', 'ground-fault', 'lead-marking', 'area-marking', 'lead-free']),
    );
    for (const item of CIRCUIT_CHECKLIST) expect(item.source.text).toMatch(/^NEC \d{3}/);
  });

  it('never takes protection of equipment for protection of people', () => {
    for (const device of ['equipment', 'people', 'none'] as const)
      expect(groundFault({ device }).caution).toContain('not shock protection for people');
  });
});
