import { describe, expect, it } from '@jest/globals';
import type { SitePlan } from '../../entry/geometry/site-plan.js';
import { layCable, type CableLayout, type LayoutOutcome } from './lay-cable.js';
import { EXAMPLE_CABLE, EXAMPLE_SITE } from './testing/example-site.js';

const layoutOf = (outcome: LayoutOutcome): CableLayout => {
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.layout;
};
const AREAS = ['landing', 'steps', 'walk'];

describe('laying the cable of the example entry', () => {
  const layout = layoutOf(layCable(EXAMPLE_SITE, AREAS, EXAMPLE_CABLE));

  it('uses the factory length to the tenth of an inch', () => {
    expect(layout.measure.length).toBeCloseTo(EXAMPLE_CABLE.length, 1);
  });

  it('lies at 3 in or just above (the trade: 3 in on centres, no source)', () => {
    expect(layout.measure.closest).toBeGreaterThanOrEqual(2.98);
    expect(layout.measure.closest).toBeLessThan(3.6);
  });

  it('keeps bends, setbacks and gaps', () => {
    expect(layout.measure.tightestBend).toBeGreaterThanOrEqual(0.99);
    expect(layout.measure.clearances.sides).toBeGreaterThanOrEqual(-0.01);
    for (const { widestGap } of layout.measure.fields) expect(widestGap.across).toBeLessThanOrEqual(12);
  });

  it('begins at the setback straight in from the sleeve and runs through the fields in turn', () => {
    expect(layout.pieces[0]!.from.y).toBeCloseTo(3, 5);
    expect(layout.coldLeadOutside).toBeLessThan(6);
    const levels = layout.pieces.map(({ from }) => Math.round(from.z * 100) / 100);
    expect([...new Set(levels)].filter((z) => [0, -7.25, -14.5].includes(z))).toEqual([0, -7.25, -14.5]);
    for (const [i, z] of levels.slice(1).entries()) expect(z).toBeLessThanOrEqual(levels[i]!);
  });

  it('puts the sensor between two runs, a foot from every side', () => {
    expect(layout.sensor!.toSide).toBeGreaterThanOrEqual(12);
    expect(layout.sensor!.toRuns).toBeGreaterThan(1.3);
    expect(layout.sensor!.toRuns).toBeLessThan(6);
  });

  it('shares the label out among the fields to the last inch', () => {
    const sum = layout.measure.fields.reduce((total, { length }) => total + length, 0);
    expect(sum).toBeCloseTo(EXAMPLE_CABLE.length, 1);
    for (const { wattsPerSquareFoot } of layout.measure.fields) expect(wattsPerSquareFoot).toBeLessThan(60);
  });

  it('gives the same layout again', () => {
    expect(JSON.stringify(layoutOf(layCable(EXAMPLE_SITE, AREAS, EXAMPLE_CABLE)))).toBe(
      JSON.stringify(layout),
    );
  });
});

describe('a set that does not fit', () => {
  it('is too long: by how much, and what would fit', () => {
    const outcome = layCable(EXAMPLE_SITE, ['landing', 'steps'], { ...EXAMPLE_CABLE, length: 600 * 12 });
    expect(outcome).toMatchObject({ ok: false, code: 'setTooLong' });
    if (outcome.ok) return;
    expect(outcome.message).toMatch(
      /^the set is \d+ ft too long .* a set of \d+ ft to \d+ ft fits.*never cut/,
    );
    const fitting = layCable(EXAMPLE_SITE, ['landing', 'steps'], {
      ...EXAMPLE_CABLE,
      length: Math.floor(outcome.fits!.longest / 12) * 12,
    });
    expect(fitting.ok).toBe(true);
  });

  it('is too short: by how much, and what would fit', () => {
    const outcome = layCable(EXAMPLE_SITE, ['landing'], { ...EXAMPLE_CABLE, length: 40 * 12 });
    expect(outcome).toMatchObject({ ok: false, code: 'setTooShort' });
    if (!outcome.ok) expect(outcome.message).toMatch(/too short to leave no gap over 12 in; a set of \d+ ft/);
  });
});

describe('surfaces that cannot be heated in turn', () => {
  it('names surfaces that do not meet', () => {
    const outcome = layCable(EXAMPLE_SITE, ['landing', 'walk'], EXAMPLE_CABLE);
    expect(outcome).toMatchObject({ ok: false, code: 'noWayThrough' });
    if (!outcome.ok) expect(outcome.message).toContain('"landing" and "walk" do not share a side');
  });

  it('names a surface that the setbacks leave nothing of', () => {
    const plan: SitePlan = {
      ...EXAMPLE_SITE,
      surfaces: EXAMPLE_SITE.surfaces.map((surface) => ({ ...surface, setback: 40, sideSetbacks: {} })),
    };
    const outcome = layCable(plan, ['landing'], EXAMPLE_CABLE);
    expect(outcome).toMatchObject({ ok: false, code: 'noWayThrough' });
  });

  it('asks for areas when the set names none', () => {
    expect(layCable(EXAMPLE_SITE, [], EXAMPLE_CABLE)).toMatchObject({ ok: false, code: 'noWayThrough' });
  });
});
