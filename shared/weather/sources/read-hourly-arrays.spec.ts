import { describe, expect, it } from '@jest/globals';
import { epochMs, HOUR_MS } from '../../units/time.js';
import { HOURLY_VARIABLES, readHourlyArrays } from './read-hourly-arrays.js';

const START = Date.parse('2031-01-06T12:00:00Z');
const FETCHED = epochMs(Date.parse('2031-01-06T11:50:00Z'));

/** An answer in the published shape: arrays beside a block of units. */
const answer = (hourly: Record<string, unknown> = {}, units: Record<string, unknown> = {}) => ({
  utc_offset_seconds: 0,
  hourly_units: {
    time: 'unixtime',
    temperature_2m: '°C',
    dew_point_2m: '°C',
    wind_speed_10m: 'km/h',
    wind_gusts_10m: 'km/h',
    precipitation_probability: '%',
    precipitation: 'mm',
    ...units,
  },
  hourly: {
    time: [0, 1, 2].map((hour) => (START + hour * HOUR_MS) / 1000),
    temperature_2m: [0, 5, 10],
    dew_point_2m: [-10, -10, null],
    wind_speed_10m: [16.09344, 0, 0],
    wind_gusts_10m: [99, 32.18688, 0],
    precipitation_probability: [99, 40, 0],
    precipitation: [99, 25.4, 0],
    ...hourly,
  },
});

describe('hourly arrays', () => {
  it('are converted once, and what tells of the hour before is moved to its begin', () => {
    const read = readHourlyArrays(answer(), FETCHED);
    const hours = read.ok ? read.forecast.hours : [];
    // 0 °C is 32 °F, a mile 1.609344 km, an inch 25.4 mm: exact by definition (NIST SP 811). The service describes
    // precipitation as the sum of the preceding hour: what stands at 13:00 fell from 12:00.
    expect(hours.find(({ at }) => at === START)).toEqual({
      at: START,
      temperature: 32,
      dewPoint: 14,
      wind: 10,
      gust: 20,
      rainChance: 40,
      rainAmount: 1,
    });
    expect(hours.at(-1)).toMatchObject({ temperature: 50, dewPoint: null, rainAmount: null });
  });

  it('have no hour before their first: a sum from there makes none', () => {
    const read = readHourlyArrays(answer(), FETCHED);
    expect(read.ok && read.forecast.hours.map(({ at }) => at)).toEqual(
      [0, 1, 2].map((hour) => START + hour * HOUR_MS),
    );
  });

  it('are as old as their fetching', () => {
    const read = readHourlyArrays(answer(), FETCHED);
    expect(read.ok && read.forecast.issuedAt).toBe(FETCHED);
  });

  it('answer in other units of the list as well', () => {
    const read = readHourlyArrays(
      answer({ temperature_2m: [32, 41, 50] }, { temperature_2m: '°F', precipitation: 'inch' }),
      FETCHED,
    );
    // 25.4 is now inches in an hour, which is past what any gauge has shown.
    expect(read).toMatchObject({
      ok: false,
      faults: [{ message: expect.stringMatching(/rain_in must be/) }],
    });
  });

  it.each([
    [{}, { time: 'iso8601' }, /timeformat=unixtime/],
    [{ time: ['2031-01-06T12:00'] }, {}, /timeformat=unixtime/],
    [{ temperature_2m: [0, 5] }, {}, /2 values for 3 times/],
    [{ temperature_2m: [0, '5', 10] }, {}, /value 2 is no number/],
    [{}, { temperature_2m: 'K' }, /unit "K" is not known/],
    [{ temperature_2m: [70, 70, 70] }, {}, /is the unit right\?/],
  ])('with a fault are refused as a whole: %#', (hourly, units, message) => {
    const read = readHourlyArrays(answer(hourly, units), FETCHED);
    expect(!read.ok && read.faults[0]?.message).toMatch(message);
  });

  it.each([[null], [{ error: true, reason: 'no such variable' }], [{ hourly: [] }]])(
    'are not in %p',
    (other) => {
      expect(readHourlyArrays(other, FETCHED).ok).toBe(false);
    },
  );

  it('ask for each field once', () => {
    const fields = HOURLY_VARIABLES.map(({ field }) => field);
    expect(new Set(fields).size).toBe(fields.length);
  });
});
