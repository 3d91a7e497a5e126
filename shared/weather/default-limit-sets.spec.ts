import { describe, expect, it } from '@jest/globals';
import { inches } from '../units/length.js';
import { fahrenheit } from '../units/temperature.js';
import { epochMs } from '../units/time.js';
import { milesPerHour, percent } from '../units/weather-units.js';
import { checkLimits } from './check-limits.js';
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
      for (const limit of [...set.limits, ...set.requirements]) expect(limit.source.text).not.toBe('');
  });

  it('come back from JSON as they went: every one passes the check', () => {
    for (const { limits, requirements } of DEFAULT_LIMIT_SETS)
      for (const list of [limits, requirements])
        expect(checkLimits(JSON.parse(JSON.stringify(list)))).toEqual({ ok: true, limits: list });
  });
});
