import { describe, expect, it } from '@jest/globals';
import { checkMeasurement } from '../../shared/entry/measurement/check-measurement.js';
import { drawnEntryFixture } from '../../shared/entry/testing/site-plan-fixture.js';
import { correctedSheet, measuredFields } from './measured-fields.js';

const sheet = drawnEntryFixture() as Readonly<Record<string, unknown>>;
const fields = measuredFields(sheet).flatMap((group) =>
  group.fields.map((one) => ({ ...one, title: group.title })),
);
const at = (path: string) => fields.find((one) => one.path === path);

describe('the measured values of a sheet', () => {
  it('are grouped by what they were measured of', () => {
    const titles = measuredFields(sheet).map(({ title }) => title);
    for (const title of ['Frost', 'Footing', 'Build up', 'Landing', 'Steps', 'Set 1', 'Plan: Landing'])
      expect(titles).toContain(title);
    expect(new Set(titles).size).toBe(titles.length);
  });

  it('are said in words of the trade, with the unit apart', () => {
    expect(at('areas.0.lengthInches')).toMatchObject({
      title: 'Landing',
      label: 'Length',
      unit: 'in',
      value: 60,
    });
    expect(at('footing.bottomInches')).toMatchObject({ label: 'Bottom below grade', unit: 'in' });
    expect(at('heatingSets.0.watts')).toMatchObject({ title: 'Set 1', label: 'Power', unit: 'W' });
    expect(at('frost.source')).toMatchObject({ title: 'Frost', label: 'Who says so', unit: '' });
    expect(at('sitePlan.surfaces.0.outlineInches.2.1')).toMatchObject({
      label: 'Outline 3, out from the wall',
      unit: 'in',
    });
  });

  it('have a name of their own each within their group, and none that only says what is meant', () => {
    const names = fields.map(({ title, label }) => `${title}: ${label}`);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
    expect(fields.some(({ path }) => /(^|\.)(version|side|key|kind|area)$/.test(path))).toBe(false);
  });
});

describe('a corrected sheet', () => {
  it('has the other value at its place and is the same elsewhere', () => {
    const { sheet: other, changed } = correctedSheet(sheet, new Map([['footing.bottomInches', 52]]));
    expect(changed).toBe(true);
    expect(other).toEqual({ ...sheet, footing: { ...(sheet['footing'] as object), bottomInches: 52 } });
    expect(checkMeasurement(other).ok).toBe(true);
    expect((sheet['footing'] as { bottomInches: number }).bottomInches).not.toBe(52);
  });

  it('says when nothing is other than it was', () => {
    const same = new Map(fields.map(({ path, value }) => [path, value]));
    expect(correctedSheet(sheet, same)).toEqual({ sheet, changed: false });
  });
});
