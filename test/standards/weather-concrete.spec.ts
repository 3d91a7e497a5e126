import { describe, expect, it } from '@jest/globals';
import { CONCRETE_REQUIREMENTS } from '../../shared/weather/concrete-requirements.js';
import { humidity, HUMIDITY_SOURCE } from '../../shared/weather/humidity.js';
import { fahrenheit } from '../../shared/units/temperature.js';
import { milesPerHour } from '../../shared/units/weather-units.js';
import { fairHour, h, inHours, temperatures } from '../../shared/weather/testing/hour-values.js';
import { weatherRequirements } from '../../shared/weather/weather-requirements.js';

const required = (id: string, values: readonly number[]) =>
  inHours(
    weatherRequirements(CONCRETE_REQUIREMENTS, temperatures(...values), h(0), h(values.length)).filter(
      ({ requirementId, cause }) => requirementId === id && cause !== null,
    ),
  );
const row = (count: number, value: number) => Array.from({ length: count }, () => value);

/*
 * Source: ACI 306.1-90 (published): cold weather is a mean daily temperature below 40 °F for more than three days, ended by
 * more than half a day over 50 °F. A day is any 24 hours here.
 */
describe('cold weather by its mean daily temperature', () => {
  it('begins once the mean has been below 40 °F for more than three days', () => {
    // The mean of the 24 hours that end with hour 62 is 40 °F yet, (61 + 19) / 2; with hour 63 it is below.
    const values = [...row(40, 61), ...row(120, 19)];
    expect(required('cold-period', values)).toEqual([[40 + 23 + 72, 160]]);
  });

  it('does not begin with three days', () => {
    const values = [...row(40, 61), ...row(23 + 72, 19), ...row(24, 61)];
    expect(required('cold-period', values)).toEqual([]);
  });

  it('is not begun by cold hours while the mean of highest and lowest is 40 °F', () => {
    const swing = Array.from({ length: 200 }, (_, i) => (i % 24 < 12 ? 60 : 20));
    expect(required('cold-period', swing)).toEqual([]);
  });

  it('is ended by more than half a day over 50 °F, not by half', () => {
    const cold = [...row(24, 61), ...row(140, 19)];
    expect(required('cold-period', [...cold, ...row(12, 51), ...row(30, 19)])).toEqual([[119, 206]]);
    expect(required('cold-period', [...cold, ...row(13, 51), ...row(30, 19)])).toEqual([[119, 177]]);
    expect(required('cold-period', [...cold, ...row(30, 50)])).toEqual([[119, 194]]);
  });
});

// Source: ACI 306R-16 (published): air at or expected below 40 °F within the protection period, here two days.
describe('cold weather by what is expected', () => {
  it('begins two days before', () => {
    expect(required('cold-expected', [...row(60, 45), 40, ...row(60, 45)])).toEqual([[12, 61]]);
  });

  it('is not begun by 41 °F', () => {
    expect(required('cold-expected', row(100, 41))).toEqual([]);
  });
});

// Source: ACI 306.1-90 as restated by Beall 2004, fig. 3-37 (published), sections under 12 in.
describe('concrete as mixed', () => {
  it.each([
    [41, []],
    [40, ['mix-60']],
    [31, ['mix-60']],
    [30, ['mix-60', 'mix-65']],
    [0, ['mix-60', 'mix-65']],
    [-1, ['mix-60', 'mix-65', 'mix-70']],
  ])('at %p °F asks for %p', (air, ids) => {
    const asked = CONCRETE_REQUIREMENTS.filter(({ id }) => id.startsWith('mix'))
      .map(({ id }) => id)
      .filter((id) => required(id, [air]).length > 0);
    expect(asked).toEqual(ids);
  });
});

// Source: UFGS 03 30 00 (published): care above 0.2 lb/ft²/h; rate by Uno 1998 with concrete at 60 °F.
describe('fresh concrete that dries', () => {
  const dries = (air: number, dewPoint: number | null, wind: number) => {
    const values = {
      temperature: fahrenheit(air),
      dewPoint: dewPoint === null ? null : fahrenheit(dewPoint),
      wind: milesPerHour(wind),
    };
    const forecast = { issuedAt: h(-1), hours: [fairHour(0, values)] };
    const found = weatherRequirements(CONCRETE_REQUIREMENTS, forecast, h(0), h(1));
    const one = found.find(({ requirementId }) => requirementId === 'drying');
    return one && (one.cause?.value ?? 'unknown');
  };

  it('asks for care in cold dry wind', () => {
    // By hand: 35 °F with a dew point of 8.3 °F is about 30 %; (60^2.5 − 0.30·35^2.5)·(1 + 0.4·30)·10⁻⁶ = 0.334.
    expect(dries(35, 8.3, 30)).toBeCloseTo(0.334, 2);
  });

  it('asks for none in calm air, and is unknown without a dew point', () => {
    expect(dries(50, 45, 3)).toBeUndefined();
    expect(dries(50, null, 3)).toBe('unknown');
  });
});

/*
 * Source: saturation vapour pressure over water as printed in steam tables: 6.112 hPa at 0 °C, 12.28 hPa at 10 °C, 23.39 hPa at
 * 20 °C (from memory of the tables); ratios by hand.
 */
describe('humidity from the dew point', () => {
  it.each([
    [68, 68, 100],
    [68, 50, 52.5],
    [68, 32, 26.1],
    [50, 32, 49.8],
  ])('air at %p °F with a dew point of %p °F has %p %%', (air, dewPoint, expected) => {
    expect(Math.abs(humidity(fahrenheit(air), fahrenheit(dewPoint)) - expected)).toBeLessThan(0.3);
  });

  it('names its source', () => {
    expect(HUMIDITY_SOURCE).toMatchObject({ mark: 'P', text: expect.stringContaining('WMO-No. 8') });
  });

  it('is never over 100 %', () => {
    expect(humidity(fahrenheit(50), fahrenheit(51))).toBe(100);
  });
});
