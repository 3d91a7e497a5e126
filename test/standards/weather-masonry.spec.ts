import { describe, expect, it } from '@jest/globals';
import { DEFAULT_LIMIT_SETS } from '../../shared/weather/default-limit-sets.js';
import { MASONRY_REQUIREMENTS, MASONRY_SOURCE } from '../../shared/weather/masonry-requirements.js';
import { fairHour, h, temperatures } from '../../shared/weather/testing/hour-values.js';
import { weatherRequirements } from '../../shared/weather/weather-requirements.js';
import { weatherWindows } from '../../shared/weather/weather-windows.js';
import { fahrenheit } from '../../shared/units/temperature.js';
import { epochMs, HOUR_MS } from '../../shared/units/time.js';
import { inches } from '../../shared/units/length.js';
import { milesPerHour, percent } from '../../shared/units/weather-units.js';

/** What laying asks for in an hour of this air and wind; what new masonry asks for afterwards is left out. */
const ids = (air: number, wind: number | null): string[] => {
  const hours = [
    fairHour(0, { temperature: fahrenheit(air), wind: wind === null ? null : milesPerHour(wind) }),
  ];
  return weatherRequirements(MASONRY_REQUIREMENTS, { issuedAt: h(-1), hours }, h(0), h(1))
    .filter(({ source }) => source === MASONRY_SOURCE)
    .map(({ requirementId }) => requirementId);
};

// Source: TMS 602-02 as restated in Masonry Magazine, Sept 2004 (published). Each step adds to the one above.
describe('masonry by air temperature', () => {
  it.each([
    [41, 5, []],
    [40, 5, ['heat-mortar']],
    [31, 5, ['heat-mortar', 'keep-mortar']],
    [24, 5, ['heat-mortar', 'keep-mortar', 'heat-masonry']],
    [19, 5, ['heat-mortar', 'keep-mortar', 'heat-masonry', 'enclosure']],
  ])('%p °F in a light wind asks for %p', (air, wind, steps) => {
    expect(ids(air, wind)).toEqual(steps);
  });

  it('24 °F with 16 mph asks for a windbreak too', () => {
    expect(ids(24, 16)).toEqual(['heat-mortar', 'keep-mortar', 'heat-masonry', 'windbreak']);
  });

  it('15 mph is not above 15 mph', () => {
    expect(ids(24, 15)).not.toContain('windbreak');
  });

  it('stands on its boundaries as the table prints them', () => {
    expect(ids(40.1, 0)).toEqual([]);
    expect(ids(32, 0)).toEqual(['heat-mortar']);
    expect(ids(31.9, 0)).toEqual(['heat-mortar', 'keep-mortar']);
    expect(ids(25, 0)).toEqual(['heat-mortar', 'keep-mortar']);
    expect(ids(24.9, 0)).toContain('heat-masonry');
    expect(ids(20.1, 0)).not.toContain('enclosure');
    expect(ids(20, 0)).toContain('enclosure');
  });

  it('takes wind that nobody knows for strong wind', () => {
    expect(ids(24, null)).toEqual(ids(24, 30));
  });

  it('names its source', () => {
    expect(MASONRY_SOURCE.mark).toBe('P');
  });
});

describe('the default masonry limits', () => {
  const masonry = DEFAULT_LIMIT_SETS.find((set) => set.key === 'masonry')?.limits ?? [];
  const start = epochMs(Date.UTC(2026, 0, 14));
  const forecast = {
    issuedAt: start,
    hours: [21, 20, 19, 21].map((temperature, i) => ({
      at: epochMs(start + i * HOUR_MS),
      temperature: fahrenheit(temperature),
      dewPoint: null,
      wind: milesPerHour(5),
      gust: milesPerHour(8),
      rainChance: percent(0),
      rainAmount: inches(0),
    })),
  };
  const end = epochMs(start + 4 * HOUR_MS);

  it('stop at 20 °F and under when there is no enclosure', () => {
    const { closed } = weatherWindows(masonry, forecast, start, end);
    expect(closed).toHaveLength(1);
    expect(closed[0]).toMatchObject({ from: start + HOUR_MS, to: start + 3 * HOUR_MS });
    expect(closed[0]?.causes).toMatchObject([
      { limitId: 'masonry-enclosure', value: 19, hour: start + 2 * HOUR_MS },
    ]);
  });

  it('do not stop inside one', () => {
    const windows = weatherWindows(masonry, forecast, start, end, { protection: ['enclosure'] });
    expect(windows).toEqual({ closed: [], unknown: [], unknownAfter: null });
  });
});

// Source: which temperature to watch is published in NCMA TEK 3-1C (mean daily without grout for 24 h, lowest with grout for
// 48 h); the steps by temperature are from memory of TMS 602.
describe('new masonry afterwards', () => {
  const after = (values: readonly number[], part: string) =>
    weatherRequirements(MASONRY_REQUIREMENTS, temperatures(...values), h(0), h(1))
      .filter(({ requirementId, cause }) => requirementId.startsWith(part) && cause !== null)
      .map(({ requirementId }) => requirementId);
  const hours = (count: number, mild: number, others: Record<number, number>) =>
    Array.from({ length: count }, (_, i) => others[i] ?? mild);

  it('is watched by the mean of highest and lowest of 24 hours where there is no grout', () => {
    expect(after(hours(24, 45, { 3: 50, 9: 30 }), 'laid')).toEqual([]);
    expect(after(hours(24, 45, { 3: 50, 9: 29 }), 'laid')).toEqual(['laid-cover']);
    expect(after(hours(24, 20, { 3: 43 }), 'laid')).toEqual(['laid-cover', 'laid-wrap']);
    expect(after(hours(24, 20, {}), 'laid')).toEqual([
      'laid-cover',
      'laid-wrap',
      'laid-blanket',
      'laid-heat',
    ]);
  });

  it('is watched by the lowest of 48 hours where it is grouted', () => {
    expect(after(hours(60, 45, { 49: 20 }), 'grouted')).toEqual([]);
    expect(after(hours(60, 45, { 48: 39 }), 'grouted')).toEqual(['grouted-cover']);
    expect(after(hours(60, 45, { 30: 24 }), 'grouted')).toEqual([
      'grouted-cover',
      'grouted-wrap',
      'grouted-blanket',
    ]);
  });
});
