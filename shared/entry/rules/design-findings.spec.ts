import { describe, expect, it } from '@jest/globals';
import { checkedEntry } from '../testing/checked-entry.js';
import type { Loose } from '../testing/entry-fixture.js';
import { circuitsOfEntry } from '../design/circuits-of-entry.js';
import { heatOfEntry } from '../design/heat-of-entry.js';
import { risersOfEntry } from '../design/risers-of-entry.js';
import { designFindings } from './design-findings.js';

const failedAfter = (change: (entry: Loose) => void) =>
  designFindings(checkedEntry(change))
    .filter((finding) => !finding.ok)
    .map(({ rule, measured, text }) => ({ rule, measured, text }));

describe('the design of an entry', () => {
  it('has no failed rule when it is built as the trade builds it', () => {
    expect(failedAfter(() => undefined)).toEqual([]);
  });

  it('fails with a set that is too long for its areas', () => {
    expect(failedAfter((entry) => (entry.heatingSets[0].heatedFeet = 420))).toEqual([
      {
        rule: 'cable-spacing',
        measured: '2.8 in',
        text: 'Set 1: Cable is too close: take a shorter set or heat more area; never cut the heating cable',
      },
    ]);
  });

  it('fails with a set that is too short', () => {
    const [failed] = failedAfter((entry) => (entry.heatingSets[0].heatedFeet = 90));
    expect(failed).toMatchObject({ rule: 'cable-spacing', measured: '13.067 in' });
  });

  it('fails with too much power for the area', () => {
    const [failed] = failedAfter((entry) => {
      Object.assign(entry.heatingSets[0], { watts: 12_000, ohms: 4.8 });
    });
    expect(failed).toMatchObject({ rule: 'power-density', measured: '122.449 W/ft²' });
  });

  it('fails with thin cover in every heated area, and names each', () => {
    const failed = failedAfter((entry) => Object.assign(entry.buildUp, { bedInches: 0.5, stoneInches: 0.9 }));
    expect(failed.map(({ text }) => text.split(':')[0])).toEqual(['Landing', 'Steps', 'Walk']);
    expect(new Set(failed.map(({ rule }) => rule))).toEqual(new Set(['cable-cover']));
  });

  it('warns of a deep cable', () => {
    const failed = failedAfter((entry) => (entry.buildUp.stoneInches = 2));
    expect(new Set(failed.map(({ rule }) => rule))).toEqual(new Set(['cable-depth']));
  });

  it('asks nothing about cable where nothing is heated', () => {
    const rules = designFindings(
      checkedEntry((entry) => {
        for (const area of entry.areas) area.heated = false;
        entry.heatingSets = [];
      }),
    ).map((finding) => finding.rule);
    expect(rules).toEqual(['footing-frost-depth', 'landing-depth', 'riser-height', 'tread-depth']);
  });
});

/** An invented design: a snowfall that the set melts, a supply with room, heights that fit. */
const DESIGN = {
  weather: {
    airF: 28,
    dewPointF: 26,
    windMph: 5,
    snowInchesPerHour: 0.05,
    source: 'weather record of the site',
  },
  freeAreaClass: 'I',
  supply: { volts: 240, panelAmperes: 200, panelCarriedAmperes: 100 },
  heights: {
    sillAboveWalkInches: 31,
    doorDropInches: 1,
    doorSwingsOver: true,
    handrailPlanned: true,
    guardPlanned: true,
  },
};
const designed = (change: (design: Loose) => void = () => undefined) => {
  const design = JSON.parse(JSON.stringify(DESIGN));
  change(design);
  return checkedEntry((entry) => (entry.design = design));
};
const broken = (entry: ReturnType<typeof checkedEntry>) =>
  designFindings(entry)
    .filter((finding) => !finding.ok)
    .map(({ rule, blocks }) => [rule, blocks]);

describe('an entry with what it is designed for', () => {
  it('is held against heat, supply and heights too, and breaks nothing', () => {
    const rules = designFindings(designed()).map((finding) => finding.rule);
    expect(rules).toEqual(
      expect.arrayContaining(['heat-supplied', 'off-voltage', 'panel-load', 'door-drop', 'handrail']),
    );
    expect(broken(designed())).toEqual([]);
  });

  it('says of each area that its snow is not melted', () => {
    const entry = designed((design) => {
      Object.assign(design.weather, { airF: 10, dewPointF: 6, windMph: 15, snowInchesPerHour: 0.1 });
      design.freeAreaClass = 'III';
    });
    expect(broken(entry)).toEqual([
      ['heat-supplied', []],
      ['heat-supplied', []],
      ['heat-supplied', []],
    ]);
    const [heat] = heatOfEntry(entry);
    expect(heat).toMatchObject({ areaKey: 'landing', areaName: 'Landing', demand: { freeAreaRatio: 1 } });
    expect(heat?.given).toBeCloseTo(3000 / 98, 9);
  });

  it('warns of another voltage and of a full panel', () => {
    expect(broken(designed((design) => (design.supply.volts = 208)))).toEqual([['off-voltage', []]]);
    expect(broken(designed((design) => (design.supply.panelCarriedAmperes = 190)))).toEqual([
      ['panel-load', []],
    ]);
    expect(circuitsOfEntry(designed())).toMatchObject({ load: 12.5, zones: [{ size: { breaker: 20 } }] });
    expect(circuitsOfEntry(checkedEntry())).toBeNull();
    expect(heatOfEntry(designed()).every(({ warmUp }) => warmUp !== null && warmUp > 0)).toBe(true);
  });

  it('keeps the final inspection from beginning without a handrail that is asked for', () => {
    expect(broken(designed((design) => (design.heights.handrailPlanned = false)))).toEqual([
      ['handrail', ['final-inspection']],
    ]);
  });

  it('has its block tops worked out from sill, layers and footing', () => {
    const plan = risersOfEntry(designed());
    expect(plan).toMatchObject({ count: 4, riser: 7.5, advice: [] });
    expect(plan?.steps.at(-1)?.blockTop).toBe(27.5);
    expect(risersOfEntry(checkedEntry())).toBeNull();
  });
});
