import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { areaFaces } from '../quantities/area-faces.js';
import { jobQuantities } from '../quantities/job-quantities.js';
import { checkedEntry } from '../testing/checked-entry.js';
import { buyAmounts } from './buy-amounts.js';
import type { BuyKey } from './buy-item.js';
import { buyLine, buyList } from './buy-list.js';
import { BUY_RULES } from './buy-rules.js';
import { flatStone, treadStock } from './tread-stock.js';
import { veneerParts } from './veneer-parts.js';

const entry = checkedEntry();
const [landing, steps, walk] = entry.areas as [never, never, never];
const keys = Object.keys(BUY_RULES) as BuyKey[];
const lineOf = (key: BuyKey, measurement = entry) => buyList(measurement).find((line) => line.key === key);

describe('stone and veneer as they are bought', () => {
  // Computed by hand: 60 × 84 in landing 30 in high; four risers of 7½ in, 60 in wide, three treads.
  it('treads are cut from stock as wide as the flight, the rest is flat stone', () => {
    expect([landing, steps, walk].map(treadStock)).toEqual([0, 15, 0]);
    expect([landing, steps, walk].map(flatStone)).toEqual([35, 0, 48]);
  });

  it('corners stand at the two outer edges of the landing and at both ends of every riser', () => {
    expect([landing, steps, walk].map((area) => veneerParts(area).corners)).toEqual([5, 5, 0]);
    expect(veneerParts(landing).flats).toBeCloseTo(42.5 - 5 * 0.75, 9);
    expect(veneerParts(walk).flats).toBe(0);
  });

  it('flats are never less than nothing', () => {
    for (const area of entry.areas) {
      expect(veneerParts(area).flats).toBeGreaterThanOrEqual(0);
      expect(veneerParts(area).flats).toBeLessThanOrEqual(areaFaces(area).upright);
    }
  });
});

describe('a line of the buy list', () => {
  it.each([
    [98, 3],
    [90.9, 2],
    [91, 3],
    [0.1, 1],
  ])('%p sq ft of mesh take %p sheets', (measured, pieces) => {
    expect(buyLine('mesh', BUY_RULES.mesh, measured).pieces).toBe(pieces);
  });

  it('never buys too little, nor a piece too many', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...keys),
        fc.double({ min: 0.01, max: 5000, noNaN: true }),
        (key, measured) => {
          const line = buyLine(key, BUY_RULES[key], measured);
          expect(Number.isInteger(line.pieces)).toBe(true);
          expect(line.needed).toBeGreaterThanOrEqual(measured);
          expect(line.pieces * line.holds).toBeGreaterThanOrEqual(line.needed - 1e-6);
          expect((line.pieces - 1) * line.holds).toBeLessThan(line.needed);
        },
      ),
    );
  });

  it.each([
    [{ ...BUY_RULES.mesh, holds: 0 }, 'must hold more than 0 sq ft'],
    [{ ...BUY_RULES.mesh, waste: -0.1 }, 'waste is a fraction of 0 or more'],
  ])('is refused for a rule that cannot be (%#)', (rule, message) => {
    expect(() => buyLine('mesh', rule, 10)).toThrow(message);
  });
});

describe('the buy list of an entry', () => {
  it('has a line for everything that it takes, with its source', () => {
    const lines = buyList(entry);
    expect(lines.map((line) => line.key)).toEqual(keys);
    for (const line of lines) {
      expect(line.pieces).toBeGreaterThan(0);
      expect(line.source.mark).toBe('C');
      expect(line.label).not.toBe('');
    }
  });

  // Computed by hand: 24 ft × 16 in × 10 in are 0.988 yd³, 1.037 with waste: five quarters.
  it('orders concrete by the quarter yard, its waste counted once', () => {
    expect(lineOf('footing-concrete')).toMatchObject({ pieces: 5 });
    expect(lineOf('footing-concrete')?.needed).toBeCloseTo(jobQuantities(entry).footingCubicYards, 9);
  });

  // Computed by hand: 98 ft² of mesh and 375 ft of cable, each with a tenth more.
  it('fastens mesh and cable', () => {
    expect(lineOf('screws')).toMatchObject({ measured: 98, pieces: 2 });
    expect(lineOf('cable-ties')).toMatchObject({ measured: 375, pieces: 5 });
  });

  // Computed by hand: 7 ft against the house and two sleeves at 2 ft, 15 % more: 12.65 ft in tubes of 12.
  it('seals the house joint and the sleeves', () => {
    expect(lineOf('sealant')).toMatchObject({ measured: 11, pieces: 2 });
  });

  it('leaves out what is not taken', () => {
    const cold = checkedEntry((measured) => {
      for (const area of measured.areas) area.heated = false;
      measured.heatingSets = [];
    });
    const left = buyList(cold).map((line) => line.key);
    for (const key of ['mesh', 'screws', 'cable-ties', 'heating-sets', 'sleeves'] as const)
      expect(left).not.toContain(key);
    expect(left).toContain('stone');
  });

  it('grows with the walk and never shrinks', () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 60, noNaN: true }), (length) => {
        const amounts = (feet: number) => buyAmounts(checkedEntry((one) => (one.areas[2].lengthFeet = feet)));
        const [less, more] = [amounts(length), amounts(length + 1)];
        for (const key of keys) expect(more[key]).toBeGreaterThanOrEqual(less[key] - 1e-9);
        expect(more.stone - less.stone).toBeCloseTo(4, 8);
      }),
      { numRuns: 20 },
    );
  });

  it('follows the rules of a company', () => {
    const rules = { ...BUY_RULES, mesh: { ...BUY_RULES.mesh, holds: 150, soldAs: 'roll of 5 by 30 ft' } };
    expect(buyList(entry, rules).find((line) => line.key === 'mesh')).toMatchObject({
      pieces: 1,
      soldAs: 'roll of 5 by 30 ft',
    });
  });
});
