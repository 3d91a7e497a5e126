import { describe, expect, it } from '@jest/globals';
import { COLUMNS } from '../columns.js';
import { unitColumn } from './unit-column.js';

describe('the column of a unit code', () => {
  it.each([
    ['temperature', 'wmoUnit:degC', 'temperature_c'],
    ['temperature', '°F', 'temperature_f'],
    ['dewPoint', 'unit:degC', 'dew_point_c'],
    ['wind', 'wmoUnit:km_h-1', 'wind_kmh'],
    ['gust', 'm/s', 'gust_ms'],
    ['wind', 'kn', 'wind_kn'],
    ['rainChance', 'wmoUnit:percent', 'rain_chance_pct'],
    ['rainAmount', 'wmoUnit:mm', 'rain_mm'],
    ['rainAmount', 'kg_m-2', 'rain_mm'],
    ['rainAmount', 'inch', 'rain_in'],
  ] as const)('of %s in %s is %s, and a forecast file knows it', (field, code, column) => {
    expect(unitColumn(field, code)).toBe(column);
    expect(COLUMNS[column]?.field).toBe(field);
  });

  it.each([
    ['temperature', 'wmoUnit:km_h-1'],
    ['temperature', 'K'],
    ['wind', '°C'],
    ['rainAmount', 'wmoUnit:m'],
    ['rainChance', ''],
    ['wind', 'constructor'],
  ] as const)('of %s in %p is none: it is not guessed', (field, code) => {
    expect(unitColumn(field, code)).toBeNull();
  });
});
