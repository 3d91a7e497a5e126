import { describe, expect, it } from '@jest/globals';
import { checkMeasurement } from '../../../shared/entry/measurement/check-measurement.js';
import { entryFixture } from '../../../shared/entry/testing/entry-fixture.js';
import { RULES } from '../../../shared/entry/rules/rules.js';
import { measuredPlace } from './measured-place.js';

const measured = (change: (entry: ReturnType<typeof entryFixture>) => void = () => undefined) => {
  const entry = entryFixture();
  change(entry);
  const check = checkMeasurement(entry);
  if (!check.ok) throw new Error(JSON.stringify(check.faults));
  return check.measurement;
};
/** The value that stands at a path of a sheet. */
const at = (path: string): unknown =>
  path
    .replaceAll(/\[(\d+)\]/g, '.$1')
    .split('.')
    .reduce<unknown>((part, name) => (part as Record<string, unknown>)[name], entryFixture());

describe('the place of a sheet that broke a rule', () => {
  it.each([
    ['footing-frost-depth', 48],
    ['landing-depth', 60],
    ['riser-height', 7.5],
    ['tread-depth', 12],
    ['cable-cover', 1.5],
    ['walk-base', 4],
    ['power-density', 3000],
    ['cold-lead-reach', 25],
  ])('of %s is where the sheet has its value', (rule, value) => {
    expect(at(measuredPlace(rule, measured()))).toBe(value);
  });

  it('is none where two areas or two sets could be meant', () => {
    const two = measured((entry) => {
      entry.areas.push({ ...entry.areas[0], key: 'landing-2', name: 'Side landing' });
      entry.heatingSets.push({ ...entry.heatingSets[0], key: 'set-2', areas: ['landing-2'] });
    });
    expect(measuredPlace('landing-depth', two)).toBe('');
    expect(measuredPlace('power-density', two)).toBe('');
    expect(measuredPlace('tread-depth', two)).toBe('areas[1].treadInches');
  });

  it('is none for a rule of more than one value, and for one that is not known', () => {
    expect(measuredPlace('cable-layout', measured())).toBe('');
    expect(measuredPlace('no-such-rule', measured())).toBe('');
  });

  it('is told for rules that there are', () => {
    const placed = ['cable-cover', 'door-drop', 'footing-frost-depth', 'shallow-footing', 'walk-base'];
    for (const rule of [
      ...placed,
      'landing-depth',
      'riser-height',
      'tread-depth',
      'cold-lead-reach',
      'power-density',
    ]) {
      expect(Object.keys(RULES)).toContain(rule);
      expect(measuredPlace(rule, measured())).not.toBe('');
    }
  });
});
