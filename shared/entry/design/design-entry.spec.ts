import { describe, expect, it } from '@jest/globals';
import { feet } from '../../units/length.js';
import { checkMeasurement } from '../measurement/check-measurement.js';
import type { Loose } from '../testing/entry-fixture.js';
import { drawnEntryFixture } from '../testing/site-plan-fixture.js';
import { designEntry, type DesignedEntry } from './design-entry.js';
import { lengthsWithin } from './set-lengths.js';

const DESIGN = {
  weather: { airF: 22, dewPointF: 18, windMph: 8, snowInchesPerHour: 0.08 },
  supply: { volts: 240, terminalsC: 75, panelAmperes: 200, panelCarriedAmperes: 90 },
  heights: {
    sillAboveWalkInches: 31.5,
    doorDropInches: 1.5,
    doorSwingsOver: false,
    handrailPlanned: true,
    guardPlanned: false,
  },
};

function designed(change: (entry: Loose) => void = () => undefined): DesignedEntry {
  const entry = drawnEntryFixture();
  entry.design = JSON.parse(JSON.stringify(DESIGN));
  const set = { heatedFeet: 260, watts: 3120, ohms: 18.46, minBendInches: 1, coldLeadOhmsPerFoot: 0.00198 };
  Object.assign(entry.heatingSets[0], set);
  change(entry);
  const check = checkMeasurement(entry);
  if (!check.ok) throw new Error(JSON.stringify(check.faults));
  return designEntry(check.measurement);
}
/** The walk left cold: less to lay. */
const coldWalk = (entry: Loose) => {
  entry.areas[2].heated = false;
  entry.heatingSets[0].areas = ['landing', 'steps'];
};
const broken = ({ findings }: DesignedEntry) => findings.filter(({ ok }) => !ok);
const whole = designed();

describe('the whole design of an entry', () => {
  it('has every part: heat, circuit, cable, risers, footing, amounts', () => {
    expect(whole.heat.map(({ areaKey }) => areaKey)).toEqual(['landing', 'steps', 'walk']);
    // 3120 W at 240 V: 13 A, 16.25 A as a continuous load, a 20 A breaker. Source: NEC 426.4, 240.6(A).
    expect(whole.circuits?.zones[0]?.size).toMatchObject({ load: 13, design: 16.25, breaker: 20 });
    expect(whole.risers).toMatchObject({ rise: 30, count: 4, riser: 7.5 });
    expect(whole.footing?.concrete).toMatchObject({ strength: 3500, source: { mark: 'P' } });
    expect(whole.quantities.cableFeet).toBeCloseTo(260, 9);
    expect(whole.buyList.map(({ key }) => key)).toContain('heating-sets');
  });

  it('lays the set to its label over its areas in turn', () => {
    const layout = whole.sets[0]?.layout;
    expect((layout?.measure.length ?? 0) / 12).toBeCloseTo(260, 1);
    expect(new Set(layout?.measure.fields.map(({ areaKey }) => areaKey))).toEqual(
      new Set(['landing', 'steps', 'walk']),
    );
  });

  it('keeps every rule, the ones of the layout among them', () => {
    expect(broken(whole)).toEqual([]);
    const rules = whole.findings.map(({ rule }) => rule);
    for (const rule of ['cable-layout', 'cold-lead-reach', 'heat-supplied', 'panel-load', 'riser-spread'])
      expect(rules).toContain(rule);
  });

  it('is the same for the same measurement', () => {
    expect(designed()).toEqual(whole);
  });

  it('says nothing of a layout where no plan was drawn', () => {
    const { sets, findings } = designed((entry) => delete entry.sitePlan);
    expect(sets).toEqual([]);
    expect(findings.map(({ rule }) => rule)).not.toContain('cable-layout');
  });

  it('says nothing of heat, circuit and risers where it is not said what for', () => {
    const { heat, circuits, risers } = designed((entry) => {
      delete entry.design;
      delete entry.sitePlan;
    });
    expect([heat, circuits, risers]).toEqual([[], null, null]);
  });
});

describe('a set that cannot be laid', () => {
  const long = designed((entry) => {
    coldWalk(entry);
    Object.assign(entry.heatingSets[0], { heatedFeet: 200, watts: 2400, ohms: 24 });
  });

  it('keeps the cable from being laid, with what would fit', () => {
    const [finding] = broken(long).filter(({ rule }) => rule === 'cable-layout');
    expect(finding).toMatchObject({ measured: '200 ft', blocks: ['cable'], source: { mark: 'T' } });
    expect(finding?.limit).toMatch(/^\d+ to \d+ ft$/);
    expect(finding?.text).toContain('never cut the heating cable');
  });

  it('is replaced on the plan by the longest made that fits, at the same watts per foot', () => {
    const [set] = long.sets;
    const [, shortest, longest] = /^(\d+) to (\d+)/.exec(set?.findings[0]?.limit ?? '') ?? [];
    expect(set?.layout).toBeNull();
    expect(set?.instead?.length).toBeGreaterThanOrEqual(Number(shortest));
    expect(set?.instead?.length).toBeLessThanOrEqual(Number(longest));
    expect(set?.instead?.layout.cable.watts).toBeCloseTo(12 * (set?.instead?.length ?? 0), 9);
  });

  it('by surfaces that do not meet says where', () => {
    const apart = designed((entry) => {
      entry.sitePlan.surfaces[2].line = [
        { atInches: [42, 110], widthInches: 48 },
        { atInches: [42, 254], widthInches: 48 },
      ];
    });
    expect(apart.sets[0]).toMatchObject({ layout: null, instead: null });
    expect(broken(apart)[0]?.text).toContain('"steps" and "walk" do not share a side');
  });

  it('by a lead that is too short is said with how long it must be', () => {
    const [finding] = broken(
      designed((entry) => {
        coldWalk(entry);
        const set = { heatedFeet: 140, watts: 1680, ohms: 34.29, coldLeadFeet: 12, coldLeadRunFeet: 12 };
        Object.assign(entry.heatingSets[0], set);
      }),
    );
    expect(finding).toMatchObject({ rule: 'cold-lead-reach', blocks: ['cable'], measured: '12 ft' });
  });
});

describe('lengths that sets are made in', () => {
  it('are those within the range', () =>
    expect(lengthsWithin(feet(290), feet(376))).toEqual([300, 325, 350, 375]));
  it('are one to order where none lies within', () =>
    expect(lengthsWithin(feet(85), feet(95))).toEqual([90]));
});
