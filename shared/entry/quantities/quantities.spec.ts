import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { cubicYards, feet, inches, squareFeet } from '../../units/length.js';
import { checkedEntry } from '../testing/checked-entry.js';
import { areaFaces } from './area-faces.js';
import { areaQuantities } from './area-quantities.js';
import { blockCount } from './block-count.js';
import { cableShare, setSquareFeet } from './cable-share.js';
import { concreteVolume } from './concrete-volume.js';
import { jobQuantities, setQuantities } from './job-quantities.js';
import { mortarMix } from './mortar.js';
import { QUANTITY_NAMES } from './quantity-names.js';
import { structureQuantities } from './structure-quantities.js';

const common = { key: 'a', name: 'A', heated: true };

describe('faces of an area', () => {
  it('a landing shows its top and three sides', () => {
    const landing = {
      ...common,
      kind: 'landing' as const,
      length: inches(60),
      width: inches(84),
      height: inches(30),
    };
    // Computed by hand: 5 × 7 ft; (5 + 5 + 7) ft × 2.5 ft.
    expect(areaFaces(landing)).toEqual({ top: 35, upright: 42.5 });
  });

  it('a flight of four risers has three treads, four riser faces and two stepped sides', () => {
    const flight = {
      ...common,
      kind: 'flight' as const,
      riserCount: 4,
      riser: inches(7.5),
      tread: inches(12),
      width: inches(60),
    };
    // Computed by hand: 3 × 1 × 5 ft; 4 × 0.625 × 5 ft and 2 × (1 + 2 + 3) × 0.625 × 1 ft.
    expect(areaFaces(flight).top).toBeCloseTo(15, 10);
    expect(areaFaces(flight).upright).toBeCloseTo(12.5 + 7.5, 10);
  });

  it('a walk shows its top only', () => {
    const walk = { ...common, kind: 'walk' as const, length: feet(12), width: inches(48) };
    expect(areaFaces(walk)).toEqual({ top: 48, upright: 0 });
  });

  it('one more riser adds a tread, a riser face and a taller side', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 20 }), (riserCount) => {
        const flight = (count: number) =>
          areaFaces({
            ...common,
            kind: 'flight',
            riserCount: count,
            riser: inches(7),
            tread: inches(12),
            width: inches(48),
          });
        const less = flight(riserCount);
        const more = flight(riserCount + 1);
        expect(more.top - less.top).toBeCloseTo(4, 8);
        expect(more.upright - less.upright).toBeCloseTo((7 / 12) * 4 + (2 * riserCount * 7) / 12, 8);
      }),
    );
  });
});

describe('block, concrete and mortar', () => {
  it('block is whole and never too few', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), (face) => {
        const count = blockCount(squareFeet(face));
        expect(Number.isInteger(count)).toBe(true);
        expect(count / 1.125).toBeGreaterThanOrEqual(face - 1e-6);
      }),
    );
  });

  it('no face takes no block', () => {
    expect(blockCount(squareFeet(0))).toBeCloseTo(0, 10);
  });

  it('waste is added to what was measured', () => {
    expect(concreteVolume(squareFeet(81), inches(4), 0.1)).toBeCloseTo(1.1, 10);
  });

  it('a leaner mortar takes less cement and the dry parts stay 38', () => {
    const lean = mortarMix(cubicYards(1), 4);
    expect(lean.sacks).toBeCloseTo(7.6, 10);
    expect(lean.sacks + lean.sandCubicFeet).toBeCloseTo(38, 10);
  });

  it.each([0, -1, NaN])('%p parts of sand are refused', (parts) => {
    expect(() => mortarMix(cubicYards(1), parts)).toThrow('sand parts must be more than 0');
  });
});

describe('cable of an area', () => {
  const entry = checkedEntry();

  it('is its share of the set by area, and all of it together', () => {
    const shares = entry.areas.map((area) => cableShare(area, entry));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(375, 8);
    // Computed by hand: 35, 15 and 48 of 98 ft².
    expect(shares[0]).toBeCloseTo((375 * 35) / 98, 8);
    expect(shares[2]).toBeCloseTo((375 * 48) / 98, 8);
  });

  it('is none where no set runs', () => {
    const cold = checkedEntry((measured) => {
      measured.areas[2].heated = false;
      measured.heatingSets[0].areas.pop();
    });
    expect(cold.areas.map((area) => cableShare(area, cold) > 0)).toEqual([true, true, false]);
  });

  it('a set covers the areas it runs through', () => {
    const [set] = entry.heatingSets;
    if (!set) throw new Error('no set');
    expect(setSquareFeet(set, entry)).toBe(98);
    expect(setQuantities(set)).toMatchObject({
      heatingSets: 1,
      sleeves: 2,
      cableFeet: 375,
      topSquareFeet: 0,
    });
  });
});

describe('what stands in the ground', () => {
  it('comes from footing and uprights', () => {
    const found = structureQuantities(checkedEntry());
    // Computed by hand: 24 ft × (16 + 12) in × 48 in; 24 ft × 16 in × 10 in with 5 %.
    expect(found.digCubicYards).toBeCloseTo((24 * (28 / 12) * 4) / 27, 8);
    expect(found.footingCubicYards).toBeCloseTo(((24 * (16 / 12) * (10 / 12)) / 27) * 1.05, 8);
    // 24 ft × 38 in below grade and 42.5 + 20 ft² above, at 1.125.
    expect(found.blocks).toBe(Math.ceil((24 * (38 / 12) + 62.5) * 1.125));
    expect(found.groutCubicYards).toBeCloseTo((found.blocks * 0.3) / 27, 8);
  });

  it('is nothing without a footing', () => {
    const walkOnly = checkedEntry((measured) => {
      measured.areas = [measured.areas[2]];
      measured.heatingSets[0].areas = ['walk'];
      measured.heatingSets[0].heatedFeet = 180;
      measured.footing = null;
    });
    expect(Object.values(structureQuantities(walkOnly))).toEqual([0, 0, 0, 0, 0]);
  });
});

describe('quantities of a job', () => {
  const entry = checkedEntry();
  const job = jobQuantities(entry);

  it('have every name, finite and not negative', () => {
    expect(Object.keys(job)).toEqual([...QUANTITY_NAMES]);
    for (const value of Object.values(job)) expect(Number.isFinite(value) && value >= 0).toBe(true);
  });

  it('are the sum of the areas for what areas have', () => {
    const parts = entry.areas.map((area) => areaQuantities(area, entry));
    for (const name of [
      'topSquareFeet',
      'bedCubicYards',
      'veneerSquareFeet',
      'cableFeet',
      'risers',
    ] as const) {
      expect(job[name]).toBeCloseTo(
        parts.reduce((sum, part) => sum + part[name], 0),
        8,
      );
    }
  });

  it('have a sleeve for each of the two leads of a set', () => {
    expect(job.sleeves).toBe(2 * job.heatingSets);
  });

  it('have mesh only where it is heated and a base only under walks', () => {
    const cold = checkedEntry((measured) => {
      measured.areas[0].heated = false;
      measured.heatingSets[0].areas.shift();
    });
    const [landing, , walk] = cold.areas.map((area) => areaQuantities(area, cold));
    expect(landing).toMatchObject({ meshSquareFeet: 0, cableFeet: 0, baseSquareFeet: 0 });
    expect(walk).toMatchObject({ meshSquareFeet: 48, baseSquareFeet: 48 });
  });

  it('grow with the walk', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 300, noNaN: true }), (length) => {
        const longer = jobQuantities(checkedEntry((measured) => (measured.areas[2].lengthFeet = length + 1)));
        const shorter = jobQuantities(checkedEntry((measured) => (measured.areas[2].lengthFeet = length)));
        expect(longer.stoneSquareFeet - shorter.stoneSquareFeet).toBeCloseTo(4, 6);
        expect(longer.digCubicYards).toBe(shorter.digCubicYards);
      }),
      { numRuns: 25 },
    );
  });
});
