import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { entryFixture, type Loose } from '../testing/entry-fixture.js';
import { checkMeasurement } from './check-measurement.js';

/** Every fault of the fixture after a change, as `path: message`. */
const faultsAfter = (change: (entry: Loose) => void): string[] => {
  const entry = entryFixture();
  change(entry);
  const check = checkMeasurement(entry);
  return check.ok ? [] : check.faults.map((fault) => `${fault.path}: ${fault.message}`);
};

describe('a measurement as a site visit writes it', () => {
  it('is taken, with the defaults that labels often leave out', () => {
    const check = checkMeasurement(entryFixture());
    expect(check.ok).toBe(true);
    if (!check.ok) return;
    expect(check.measurement.heatingSets[0]).toMatchObject({
      labelTemperature: 68,
      coldLeadOhmsPerFoot: 0,
      temperatureCoefficient: 0,
      toleranceLow: -0.05,
      toleranceHigh: 0.1,
      minInsulation: 20,
      insulationTestVolts: 500,
      minBend: null,
      cureDays: 28,
    });
  });

  it('keeps areas and sets in their order', () => {
    const check = checkMeasurement(entryFixture());
    if (!check.ok) throw new Error('refused');
    expect(check.measurement.areas.map((area) => area.key)).toEqual(['landing', 'steps', 'walk']);
    expect(check.measurement.heatingSets[0]?.areas).toEqual(['landing', 'steps', 'walk']);
  });

  it('survives JSON', () => {
    const check = checkMeasurement(entryFixture());
    expect(JSON.parse(JSON.stringify(check))).toEqual(check);
  });

  it('with an unheated walk alone needs neither footing nor set', () => {
    expect(
      faultsAfter((entry) => {
        entry.areas = [{ ...entry.areas[2], heated: false }];
        entry.footing = null;
        entry.heatingSets = [];
      }),
    ).toEqual([]);
  });
});

describe('a slip of the pen', () => {
  it('a riser of 75 in asks whether 7.5 was meant', () => {
    expect(faultsAfter((entry) => (entry.areas[1].riserInches = 75))).toEqual([
      'areas[1].riserInches: must be 4 to 7¾ in, got 75; did you mean 7.5?',
    ]);
  });

  it('a riser over the limit by a little is refused without a guess', () => {
    expect(faultsAfter((entry) => (entry.areas[1].riserInches = 7.76))).toEqual([
      'areas[1].riserInches: must be 4 to 7¾ in, got 7.76',
    ]);
  });

  it('a footing depth in feet asks whether inches were meant', () => {
    expect(faultsAfter((entry) => (entry.footing.bottomInches = 4))[0]).toBe(
      'footing.bottomInches: must be 6 to 144 in, got 4; did you mean 48?',
    );
  });

  it('a walk in inches asks whether feet were meant', () => {
    expect(faultsAfter((entry) => (entry.areas[2].lengthFeet = 1200))[0]).toContain('did you mean 120?');
  });

  it('a number typed as a text is refused, not read', () => {
    expect(faultsAfter((entry) => (entry.areas[0].lengthInches = '60'))).toEqual([
      'areas[0].lengthInches: must be a number in in, got "60"',
    ]);
  });
});

describe('all faults at once', () => {
  it('are named with their places', () => {
    const faults = faultsAfter((entry) => {
      entry.version = 2;
      delete entry.frost.source;
      entry.buildUp.stoneInches = 60;
      entry.areas[0].kind = 'porch';
      entry.areas[1].riserCount = 1;
      entry.heatingSets[0].watts = 'many';
      entry.colour = 'grey';
    });
    expect(faults.map((fault) => fault.split(':')[0])).toEqual([
      'colour',
      'version',
      'frost.source',
      'buildUp.stoneInches',
      'areas[0].kind',
      'areas[1].riserCount',
      'heatingSets[0].watts',
    ]);
  });

  it('an unknown name is refused with the names there are', () => {
    const [fault] = faultsAfter((entry) => (entry.areas[2].slope = 2));
    expect(fault).toBe(
      'areas[2].slope: unknown name; remove it or use one of: key, kind, name, heated, lengthFeet, widthInches',
    );
  });

  it.each([null, [], 'entry', 7])('%p is no measurement', (value) => {
    expect(checkMeasurement(value)).toMatchObject({ ok: false, faults: [{ path: '' }] });
  });

  it('nothing at all can make it throw', () => {
    fc.assert(
      fc.property(fc.anything({ maxDepth: 4 }), (value) => {
        const check = checkMeasurement(value);
        expect(check.ok || check.faults.length > 0).toBe(true);
      }),
    );
  });

  it('losing any one part of it is noticed', () => {
    const optional = ['walkBaseInches', 'heatingSets'];
    const paths = Object.keys(entryFixture());
    for (const path of paths.filter((name) => !optional.includes(name))) {
      expect(faultsAfter((entry) => delete entry[path])).not.toEqual([]);
    }
    for (const i of [0, 1, 2]) {
      for (const name of Object.keys(entryFixture().areas[i])) {
        expect(faultsAfter((entry) => delete entry.areas[i][name])).not.toEqual([]);
      }
    }
    for (const name of Object.keys(entryFixture().heatingSets[0])) {
      expect(faultsAfter((entry) => delete entry.heatingSets[0][name])).not.toEqual([]);
    }
  });
});

describe('what no single value shows', () => {
  it('a key used twice', () => {
    expect(faultsAfter((entry) => (entry.areas[2].key = 'landing'))).toContain(
      'areas: key "landing" is used twice; give each its own',
    );
  });

  it('a heated area that no set runs through', () => {
    expect(faultsAfter((entry) => entry.heatingSets[0].areas.pop())).toEqual([
      'areas[2]: "walk" is heated but no heating set runs through it',
    ]);
  });

  it('a set through an area that is not heated', () => {
    expect(faultsAfter((entry) => (entry.areas[2].heated = false))).toEqual([
      'heatingSets[0].areas: area "walk" is not heated; mark it heated or take it out',
    ]);
  });

  it('a set through an area that is not there', () => {
    expect(faultsAfter((entry) => entry.heatingSets[0].areas.push('garage'))).toEqual([
      'heatingSets[0].areas: there is no area "garage"; measure it or take it out',
    ]);
  });

  it('an area that two sets heat', () => {
    const faults = faultsAfter((entry) => {
      entry.heatingSets.push({ ...entry.heatingSets[0], key: 'set-2', areas: ['walk'] });
    });
    expect(faults).toEqual([
      'heatingSets: area "walk" is named twice; where two sets heat one surface, measure it as two areas',
    ]);
  });

  it('a landing without a footing, and a footing under nothing', () => {
    expect(faultsAfter((entry) => (entry.footing = null))).toEqual([
      'footing: landing and steps need a footing; measure it',
    ]);
    expect(
      faultsAfter((entry) => {
        entry.areas = [entry.areas[2]];
        entry.heatingSets[0].areas = ['walk'];
      }),
    ).toEqual(['footing: no landing or steps stand on it; leave it out']);
  });

  it('risers that do not add up to the landing', () => {
    expect(faultsAfter((entry) => (entry.areas[1].riserCount = 3))).toEqual([
      'areas[1]: 3 risers of 7.5 in make 22.5 in, the landing stands 30 in high; measure both again',
    ]);
  });

  it('risers that add up within half an inch are taken', () => {
    expect(faultsAfter((entry) => (entry.areas[0].heightInches = 30.5))).toEqual([]);
    expect(faultsAfter((entry) => (entry.areas[0].heightInches = 30.6))).toHaveLength(1);
  });

  it('a label whose watts, volts and ohms disagree', () => {
    expect(faultsAfter((entry) => (entry.heatingSets[0].ohms = 192))).toEqual([
      'heatingSets[0].ohms: 3000 W at 240 V makes 19.20 Ω, the label says 192 Ω; read the label again',
    ]);
  });

  it('a label within a tenth is taken: printed values are rounded', () => {
    expect(faultsAfter((entry) => (entry.heatingSets[0].ohms = 20.5))).toEqual([]);
  });
});
