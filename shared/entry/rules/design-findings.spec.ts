import { describe, expect, it } from '@jest/globals';
import { checkedEntry } from '../testing/checked-entry.js';
import type { Loose } from '../testing/entry-fixture.js';
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
    expect(rules).toEqual(['footing-frost-depth', 'riser-height', 'tread-depth']);
  });
});
