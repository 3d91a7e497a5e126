import { describe, expect, it } from '@jest/globals';
import { inches } from '../units/length.js';
import { fahrenheit } from '../units/temperature.js';
import { epochMs } from '../units/time.js';
import { milesPerHour, percent } from '../units/weather-units.js';
import { checkLimitSets } from './check-limit-sets.js';
import { DEFAULT_LIMIT_SETS } from './default-limit-sets.js';
import { exceeds } from './exceeds.js';
import type { ForecastHour } from './forecast.js';

const hour = (values: Partial<ForecastHour>): ForecastHour => ({
  at: epochMs(0),
  temperature: fahrenheit(60),
  dewPoint: null,
  wind: milesPerHour(5),
  gust: milesPerHour(9),
  rainChance: percent(0),
  rainAmount: inches(0),
  ...values,
});
const stopping = (key: string, values: Partial<ForecastHour>): string[] =>
  (DEFAULT_LIMIT_SETS.find((set) => set.key === key)?.limits ?? [])
    .filter((limit) => exceeds(limit, hour(values)) === true)
    .map((limit) => limit.id);
const at = (value: number): Partial<ForecastHour> => ({ temperature: fahrenheit(value) });

describe('the limits a company starts from', () => {
  it('stop nothing on a fair day', () => {
    for (const set of DEFAULT_LIMIT_SETS) expect([set.key, stopping(set.key, {})]).toEqual([set.key, []]);
  });

  it.each<[string, number, string[]]>([
    ['sealant', 40, []],
    ['sealant', 39.9, ['sealant-cold']],
    ['sealant', 90, []],
    ['sealant', 90.1, ['sealant-hot']],
    ['masonry', 20.1, []],
    ['masonry', 20, ['masonry-enclosure']],
    ['masonry', 100, []],
    ['masonry', 100.1, ['hot']],
    ['concrete', 40, []],
    ['concrete', 39, ['concrete-cold']],
    ['concrete', 19, ['concrete-cold', 'concrete-severe']],
    ['veneer', 40, []],
    ['veneer', 39, ['veneer-cold']],
    ['veneer', 32, ['veneer-cold', 'veneer-freeze']],
    ['stone', 50, []],
    ['stone', 49, ['stone-cold']],
    ['cable', 23, []],
    ['cable', 22, ['cable-bending']],
    ['digging', 9, ['ground-frozen']],
  ])('%s at %p °F: %p', (key, value, ids) => {
    expect(stopping(key, at(value))).toEqual(ids);
  });

  it('stop mortar over 90 °F only with wind over 8 mph', () => {
    expect(stopping('masonry', { ...at(95), wind: milesPerHour(8) })).toEqual([]);
    expect(stopping('masonry', { ...at(95), wind: milesPerHour(8.1) })).toEqual(['hot-wind']);
  });

  it('stop demo in heavy rain and high wind', () => {
    expect(stopping('demolition', { rainAmount: inches(0.2) })).toEqual(['rain-amount']);
    expect(stopping('demolition', { gust: milesPerHour(40) })).toEqual(['gust']);
  });

  it('stop cable in any rain', () => {
    expect(stopping('cable', { rainAmount: inches(0.02) })).toEqual(['rain-amount']);
    expect(stopping('cable', { rainChance: percent(70) })).toEqual(['rain-chance']);
  });

  it('each have a source', () => {
    for (const set of DEFAULT_LIMIT_SETS)
      for (const limit of set.limits) expect(limit.source.text).not.toBe('');
  });
});

describe('limits that a company edits', () => {
  const copy = () => JSON.parse(JSON.stringify(DEFAULT_LIMIT_SETS)) as Record<string, unknown>[];
  const faults = (value: unknown) => {
    const check = checkLimitSets(value);
    return check.ok ? [] : check.faults.map((fault) => `${fault.path}: ${fault.message}`);
  };
  const edited = (more: Record<string, unknown>) => {
    const sets = copy();
    Object.assign((sets[3]?.['limits'] as Record<string, unknown>[])[0] ?? {}, more);
    return faults(sets);
  };

  it('come back from JSON as they went', () => {
    expect(checkLimitSets(copy())).toEqual({ ok: true, sets: DEFAULT_LIMIT_SETS });
  });

  it('may be changed', () => {
    expect(edited({ value: 25, inclusive: false, aheadHours: 12 })).toEqual([]);
  });

  it.each<[Record<string, unknown>, string]>([
    [{ value: 200 }, '[3].limits[0].value: must be -60 to 130 °F, got 200'],
    [{ value: '20' }, '[3].limits[0].value: must be a number in °F, got "20"'],
    [{ measure: 'snow' }, '[3].limits[0].measure: must be one of temperature, wind'],
    [{ stop: 'near' }, '[3].limits[0].stop: must be one of below, above'],
    [{ aheadHours: 1.5 }, '[3].limits[0].aheadHours: must be a whole number'],
    [{ liftedBy: 'tent' }, '[3].limits[0].liftedBy: must be a list'],
    [{ and: { measure: 'wind', above: -1 } }, '[3].limits[0].and.above: must be 0 to 150 mph'],
    [{ id: 'rain-amount' }, '[3].limits: two limits have the id "rain-amount"'],
    [{ source: 'me' }, '[3].limits[0].source: must be an object'],
    [{ colour: 'grey' }, '[3].limits[0].colour: unknown name'],
  ])('%j is refused with its place', (more, message) => {
    expect(edited(more).join('\n')).toContain(message);
  });

  it('with one key twice are refused', () => {
    const sets = copy();
    expect(faults([...sets, sets[0]])).toEqual([': two sets have the key "demolition"; rename one of them']);
  });

  it.each([null, {}, 'limits'])('%p are none', (value) => {
    expect(faults(value)).toHaveLength(1);
  });
});
