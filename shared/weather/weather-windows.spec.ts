import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { COMMON_PRACTICE } from '../entry/source.js';
import { inches } from '../units/length.js';
import { fahrenheit } from '../units/temperature.js';
import { epochMs } from '../units/time.js';
import { milesPerHour } from '../units/weather-units.js';
import { exceeds } from './exceeds.js';
import type { Forecast } from './forecast.js';
import { coldLimit as limit, fairHour as hour, h, inHours, temperatures } from './testing/hour-values.js';
import type { WeatherLimit } from './weather-limit.js';
import { weatherWindows } from './weather-windows.js';

const closedHours = (windows: ReturnType<typeof weatherWindows>) => inHours(windows.closed);

describe('one limit', () => {
  it('closes the hours that exceed it, merged, with the worst of them as the cause', () => {
    const windows = weatherWindows([limit()], temperatures(45, 39, 36, 38, 41, 39, 44), h(0), h(7));
    expect(closedHours(windows)).toEqual([
      [1, 4],
      [5, 6],
    ]);
    expect(windows.closed[0]?.causes).toEqual([
      {
        limitId: 'cold',
        label: 'Too cold',
        value: 36,
        limit: 40,
        unit: '°F',
        hour: h(2),
        text: 'Too cold: 36 °F, under 40 °F',
        source: COMMON_PRACTICE,
      },
    ]);
    expect(windows.unknown).toEqual([]);
    expect(windows.unknownAfter).toBeNull();
  });

  it('names the first of equally bad hours', () => {
    const windows = weatherWindows([limit()], temperatures(38, 38), h(0), h(2));
    expect(windows.closed[0]?.causes[0]?.hour).toBe(h(0));
  });

  it.each<[Partial<WeatherLimit>, number, boolean]>([
    [{ stop: 'below', value: 40, inclusive: false }, 40, false],
    [{ stop: 'below', value: 40, inclusive: false }, 39.9, true],
    [{ stop: 'below', value: 20, inclusive: true }, 20, true],
    [{ stop: 'below', value: 20, inclusive: true }, 20.1, false],
    [{ stop: 'above', value: 90, inclusive: false }, 90, false],
    [{ stop: 'above', value: 90, inclusive: false }, 90.1, true],
    [{ stop: 'above', value: 90, inclusive: true }, 90, true],
  ])('%j at %p °F stops: %p', (more, value, stops) => {
    expect(exceeds(limit(more), hour(0, { temperature: fahrenheit(value) }))).toBe(stops);
  });

  it('that needs a second value stops only with it', () => {
    const hot = limit({ stop: 'above', value: 90, and: { measure: 'wind', above: 8 } });
    const at95 = { temperature: fahrenheit(95) };
    expect(exceeds(hot, hour(0, { ...at95, wind: milesPerHour(8) }))).toBe(false);
    expect(exceeds(hot, hour(0, { ...at95, wind: milesPerHour(9) }))).toBe(true);
    expect(exceeds(hot, hour(0, { ...at95, wind: null }))).toBe('unknown');
    expect(exceeds(hot, hour(0, { temperature: fahrenheit(80), wind: null }))).toBe(false);
  });

  it('is lifted by the protection it names, and by no other', () => {
    const cold = limit({ liftedBy: ['enclosure'] });
    const forecast = temperatures(30, 30);
    expect(weatherWindows([cold], forecast, h(0), h(2), { protection: ['enclosure'] }).closed).toEqual([]);
    expect(weatherWindows([cold], forecast, h(0), h(2), { protection: ['blanket'] }).closed).toHaveLength(1);
  });

  it('says nothing about a stretch that is empty or runs backwards', () => {
    const none = { closed: [], unknown: [], unknownAfter: null };
    expect(weatherWindows([limit()], temperatures(30, 30), h(1), h(1))).toEqual(none);
    expect(weatherWindows([limit()], temperatures(30, 30), h(2), h(1))).toEqual(none);
  });

  it('is cut to what was asked', () => {
    const windows = weatherWindows(
      [limit()],
      temperatures(30, 30, 30, 30),
      epochMs(h(1) + 1),
      epochMs(h(3) - 1),
    );
    expect(windows.closed).toMatchObject([{ from: h(1) + 1, to: h(3) - 1 }]);
  });
});

describe('looking ahead', () => {
  const ahead = limit({ aheadHours: 3 });

  it('closes the hours before the bad one', () => {
    const windows = weatherWindows([ahead], temperatures(50, 50, 50, 50, 50, 39, 50, 50, 50, 50), h(0), h(7));
    expect(closedHours(windows)).toEqual([[2, 6]]);
  });

  it('sees a bad hour past the end of what was asked', () => {
    const windows = weatherWindows([ahead], temperatures(50, 50, 50, 39, 50, 50, 50, 50), h(0), h(2));
    expect(closedHours(windows)).toEqual([[0, 2]]);
  });

  it('cannot tell about the last hours of a forecast', () => {
    const windows = weatherWindows([ahead], temperatures(50, 50, 50, 50, 50), h(0), h(5));
    expect(windows.unknownAfter).toBe(h(2));
  });
});

describe('looking back', () => {
  const back = limit({ backHours: 2 });

  it('closes the hours after the bad one', () => {
    const windows = weatherWindows([back], temperatures(50, 50, 39, 50, 50, 50, 50), h(0), h(7));
    expect(closedHours(windows)).toEqual([[2, 5]]);
  });

  it('sees a bad hour before what was asked', () => {
    const windows = weatherWindows([back], temperatures(50, 50, 39, 50, 50, 50), h(3), h(6));
    expect(closedHours(windows)).toEqual([[3, 5]]);
    expect(windows.closed[0]?.causes[0]).toMatchObject({ value: 39, hour: h(2) });
  });

  it('cannot tell about the first hours of a record', () => {
    const windows = weatherWindows([back], temperatures(50, 50, 50, 50), h(0), h(4));
    expect(inHours(windows.unknown)).toEqual([[0, 2]]);
    expect(windows.unknownAfter).toBeNull();
  });
});

describe('several limits', () => {
  const rain = limit({ id: 'rain', measure: 'rainAmount', stop: 'above', value: 0.05, text: 'Rain' });
  const forecast: Forecast = {
    issuedAt: h(-1),
    hours: [
      hour(0),
      hour(1, { temperature: fahrenheit(38) }),
      hour(2, { rainAmount: inches(0.2) }),
      hour(3, { temperature: fahrenheit(37), rainAmount: inches(0.1) }),
      hour(4),
    ],
  };

  it('close one stretch together, each with its own worst hour', () => {
    const windows = weatherWindows([limit(), rain], forecast, h(0), h(5));
    expect(closedHours(windows)).toEqual([[1, 4]]);
    expect(windows.closed[0]?.causes.map((cause) => [cause.limitId, cause.value, cause.hour])).toEqual([
      ['cold', 37, h(3)],
      ['rain', 0.2, h(2)],
    ]);
  });

  it('that are none leave everything open and known', () => {
    expect(weatherWindows([], forecast, h(0), h(99))).toEqual({
      closed: [],
      unknown: [],
      unknownAfter: null,
    });
  });
});

describe('what the forecast does not say', () => {
  it('is unknown past its end, never fair', () => {
    const windows = weatherWindows([limit()], temperatures(50, 50), h(0), h(10));
    expect(windows.unknownAfter).toBe(h(2));
    expect(windows.closed).toEqual([]);
  });

  it('is unknown from the start when there is no hour at all', () => {
    expect(weatherWindows([limit()], temperatures(), h(0), h(5)).unknownAfter).toBe(h(0));
  });

  it('is unknown from the start when the forecast is over', () => {
    expect(weatherWindows([limit()], temperatures(50, 50), h(4), h(8)).unknownAfter).toBe(h(4));
  });

  it('is unknown in a gap and where a needed value is empty', () => {
    const gap: Forecast = {
      issuedAt: h(-1),
      hours: [hour(0), hour(3), hour(4, { temperature: null }), hour(5)],
    };
    expect(weatherWindows([limit()], gap, h(0), h(6)).unknown).toEqual([
      { from: h(1), to: h(3) },
      { from: h(4), to: h(5) },
    ]);
  });

  it('is not asked for where no limit needs it', () => {
    const noWind: Forecast = {
      issuedAt: h(-1),
      hours: [hour(0, { wind: null, gust: null, rainChance: null })],
    };
    expect(weatherWindows([limit()], noWind, h(0), h(1))).toEqual({
      closed: [],
      unknown: [],
      unknownAfter: null,
    });
  });

  it('is unknown before the first hour too', () => {
    const late: Forecast = { issuedAt: h(-1), hours: [hour(2)] };
    expect(weatherWindows([limit()], late, h(0), h(3)).unknown).toEqual([{ from: h(0), to: h(2) }]);
  });

  it('makes the hours that look into a gap unknown as well', () => {
    const gap: Forecast = { issuedAt: h(-1), hours: [hour(0), hour(1), hour(2), hour(4), hour(5), hour(6)] };
    const windows = weatherWindows([limit({ aheadHours: 2 })], gap, h(0), h(5));
    expect(windows.unknown).toEqual([{ from: h(1), to: h(4) }]);
    expect(windows.unknownAfter).toBeNull();
  });

  it('is closed rather than unknown where another limit is exceeded', () => {
    const rain = limit({ id: 'rain', measure: 'rainAmount', stop: 'above', value: 0.05 });
    const half: Forecast = {
      issuedAt: h(-1),
      hours: [hour(0, { temperature: fahrenheit(30), rainAmount: null })],
    };
    const windows = weatherWindows([limit(), rain], half, h(0), h(1));
    expect(closedHours(windows)).toEqual([[0, 1]]);
    expect(windows.unknown).toEqual([]);
  });
});

describe('any forecast', () => {
  const values = fc.array(fc.option(fc.integer({ min: 0, max: 80 })), { minLength: 1, maxLength: 40 });

  it('closes an hour exactly when it exceeds the limit, and never calls it unknown too', () => {
    fc.assert(
      fc.property(values, (given) => {
        const windows = weatherWindows([limit()], temperatures(...given), h(0), h(given.length));
        given.forEach((value, i) => {
          const within = (stretches: readonly { from: number; to: number }[]) =>
            stretches.some(({ from, to }) => from <= h(i) && h(i) < to);
          expect(within(windows.closed)).toBe(value !== null && value < 40);
          expect(within(windows.unknown)).toBe(value === null);
        });
      }),
    );
  });

  it('gives stretches in order that do not touch', () => {
    fc.assert(
      fc.property(values, fc.integer({ min: 0, max: 6 }), (given, aheadHours) => {
        const { closed } = weatherWindows(
          [limit({ aheadHours })],
          temperatures(...given),
          h(0),
          h(given.length),
        );
        closed.slice(1).forEach((one, i) => expect(one.from).toBeGreaterThan(closed[i]?.to ?? 0));
        for (const one of closed) expect(one.causes).toHaveLength(1);
      }),
    );
  });

  it('closes no less when it looks further ahead', () => {
    const total = (windows: ReturnType<typeof weatherWindows>) =>
      windows.closed.reduce((sum, one) => sum + one.to - one.from, 0);
    fc.assert(
      fc.property(values, fc.integer({ min: 0, max: 6 }), (given, aheadHours) => {
        const forecast = temperatures(...given);
        const near = weatherWindows([limit({ aheadHours })], forecast, h(0), h(given.length));
        const far = weatherWindows([limit({ aheadHours: aheadHours + 1 })], forecast, h(0), h(given.length));
        expect(total(far)).toBeGreaterThanOrEqual(total(near));
      }),
    );
  });
});
