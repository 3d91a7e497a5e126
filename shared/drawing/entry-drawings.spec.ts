import { describe, expect, it } from '@jest/globals';
import { designEntry, type DesignedEntry } from '../entry/design/design-entry.js';
import { checkMeasurement } from '../entry/measurement/check-measurement.js';
import type { Loose } from '../entry/testing/entry-fixture.js';
import { drawnEntryFixture } from '../entry/testing/site-plan-fixture.js';
import { entryDrawings } from './entry-drawings.js';
import { LETTER, scaleFor } from './paper.js';
import { sectionFactsOf } from './section-facts.js';

/** The fixture with a set that its areas take. */
function designed(change: (entry: Loose) => void = () => undefined): DesignedEntry {
  const entry = drawnEntryFixture();
  Object.assign(entry.heatingSets[0], { heatedFeet: 260, watts: 3120, ohms: 18.46, minBendInches: 1 });
  change(entry);
  const check = checkMeasurement(entry);
  if (!check.ok) throw new Error(JSON.stringify(check.faults));
  return designEntry(check.measurement);
}
const whole = designed();
const undrawn = (change: (entry: Loose) => void) =>
  designed((entry) => {
    delete entry.sitePlan;
    change(entry);
  });

describe('the drawings of an entry', () => {
  const drawings = entryDrawings(whole);

  it('are the plan of its set and its section', () => {
    expect(drawings.map(({ key, title }) => [key, title])).toEqual([
      ['cable-set-1', 'Cable plan of Set 1'],
      ['section', 'Section through landing and steps'],
    ]);
  });

  it('fit the paper at a scale of a drafting rule, and say their size as the file does', () => {
    for (const { svg, scale, width, height } of drawings) {
      expect([8, 12, 16, 24, 32, 48, 64, 96, 128]).toContain(scale);
      expect(width).toBeLessThanOrEqual(7.5);
      expect(height).toBeLessThanOrEqual(10);
      const [, w, h] = /width="([\d.]+)in" height="([\d.]+)in"/.exec(svg) ?? [];
      expect(Number(w)).toBeCloseTo(width, 2);
      expect(Number(h)).toBeCloseTo(height, 2);
    }
  });

  it('have a stroke that is one inch long on paper', () => {
    for (const { svg, scale } of drawings) {
      const [, x1, x2] =
        /class="rule"><line class="cut" x1="([-\d.]+)" y1="[-\d.]+" x2="([-\d.]+)"/.exec(svg) ?? [];
      expect(Number(x2) - Number(x1)).toBeCloseTo(scale, 6);
    }
  });

  it('are the section alone where no plan was drawn', () => {
    expect(entryDrawings(undrawn(() => undefined)).map(({ key }) => key)).toEqual(['section']);
  });

  it('are none for a walk alone', () => {
    const walk = undrawn((entry) => {
      entry.areas = [entry.areas[2]];
      entry.footing = null;
      entry.heatingSets[0].areas = ['walk'];
    });
    expect(entryDrawings(walk)).toEqual([]);
  });

  it('show what would fit, and say so, where the set does not', () => {
    const long = designed((entry) => {
      entry.areas[2].heated = false;
      const set = { areas: ['landing', 'steps'], heatedFeet: 200, watts: 2400, ohms: 24 };
      Object.assign(entry.heatingSets[0], set);
    });
    expect(long.sets[0]?.layout).toBeNull();
    const [plan] = entryDrawings(long);
    expect(plan?.title).toBe(`Cable plan with ${long.sets[0]?.instead?.length} ft in place of Set 1`);
    expect(plan?.svg).toContain(`Heating cable ${long.sets[0]?.instead?.length} ft, uncut`);
  });
});

describe('the section of an entry', () => {
  it('has the measured risers, layers, footing and frost, and the cable as it was laid', () => {
    const field = whole.sets[0]?.layout?.measure.fields[0];
    expect(sectionFactsOf(whole)).toEqual({
      landing: 60,
      riserCount: 4,
      risers: [7.5, 7.5, 7.5, 7.5],
      tread: 12,
      nosing: 1,
      bed: 1,
      stone: 1.5,
      walkBase: 4,
      footing: { length: 24, width: 16, thickness: 10, bottom: 48 },
      frostDepth: 48,
      cableSpacing: field?.meanSpacing,
    });
  });

  it('takes risers from the heights at the door where they are given', () => {
    const heights = {
      sillAboveWalkInches: 32,
      doorDropInches: 1.6,
      doorSwingsOver: false,
      handrailPlanned: true,
      guardPlanned: true,
    };
    const facts = sectionFactsOf(undrawn((entry) => (entry.design = { heights })));
    expect(facts?.risers.map((riser) => Math.round(riser * 1000) / 1000)).toEqual([7.6, 7.6, 7.6, 7.6]);
  });

  it('has one riser where a landing has no steps, and no cable where it is not heated', () => {
    const alone = undrawn((entry) => {
      entry.areas = [{ ...entry.areas[0], heightInches: 7, heated: false }];
      entry.heatingSets = [];
    });
    expect(sectionFactsOf(alone)).toMatchObject({ riserCount: 1, risers: [7], cableSpacing: null });
  });

  it('is none where a landing lies level with the walk, or two landings would need one each', () => {
    const level = (entry: Loose) => {
      entry.areas = [{ ...entry.areas[0], heightInches: 0, heated: false }];
      entry.heatingSets = [];
    };
    expect(sectionFactsOf(undrawn(level))).toBeNull();
    const two = undrawn((entry) => entry.areas.push({ ...entry.areas[0], key: 'porch', heated: false }));
    expect(sectionFactsOf(two)).toBeNull();
  });
});

describe('the scale', () => {
  const size = (width: number, height: number) => () => [width, height] as const;

  it('is the largest of a rule that leaves the margins of the paper', () => {
    // 7.5 in of paper at 1 : 16 are 120 in.
    expect(scaleFor(size(120, 10), LETTER)).toBe(16);
    expect(scaleFor(size(120.1, 10), LETTER)).toBe(24);
    expect(scaleFor(size(10, 160), LETTER)).toBe(16);
  });

  it('is refused where the paper is too small at any', () => {
    expect(() => scaleFor(size(5000, 10), LETTER)).toThrow('take larger paper');
  });
});
