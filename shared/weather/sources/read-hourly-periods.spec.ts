import { describe, expect, it } from '@jest/globals';
import { readHourlyPeriods } from './read-hourly-periods.js';

const answer = (...periods: Record<string, unknown>[]) => ({
  properties: { updateTime: '2031-01-06T11:40:00+00:00', periods },
});
const period = (hour: string, more: Record<string, unknown> = {}) => ({
  startTime: `2031-01-06T${hour}:00:00-05:00`,
  temperature: 28,
  temperatureUnit: 'F',
  ...more,
});

describe('hourly periods', () => {
  it('take bare temperatures and winds in words; of a range of wind the higher counts', () => {
    const read = readHourlyPeriods(answer(period('07', { windSpeed: '5 to 10 mph' }), period('08')));
    const unknown = { gust: null, rainAmount: null, rainChance: null };
    expect(read.ok && read.forecast.hours).toMatchObject([
      { at: Date.parse('2031-01-06T12:00:00Z'), temperature: 28, wind: 10, ...unknown },
      { temperature: 28, wind: null, ...unknown },
    ]);
  });

  it('refuse one thing in two units', () => {
    const coded = { ...period('08'), temperature: { unitCode: 'wmoUnit:degC', value: 0 } };
    expect(readHourlyPeriods(answer(period('07'), coded))).toMatchObject({
      ok: false,
      faults: [{ message: '"temperature_f" and "temperature_c" say the same; keep one' }],
    });
  });

  it('take values with unit codes', () => {
    const coded = (hour: string, celsius: number | null) => ({
      startTime: `2031-01-06T${hour}:00:00-05:00`,
      temperature: { unitCode: 'wmoUnit:degC', value: celsius },
    });
    const read = readHourlyPeriods(answer(coded('07', 0), coded('08', null)));
    expect(read.ok && read.forecast.hours.map(({ temperature }) => temperature)).toEqual([32, null]);
  });

  it.each([
    [period('07', { startTime: '2031-01-06T07:00:00' }), /no start with an offset/],
    [period('07', { windSpeed: 'breezy' }), /windSpeed is in no known form or unit/],
    [period('07', { temperatureUnit: undefined }), /temperature is in no known form or unit/],
    [period('07', { temperature: { unitCode: 'wmoUnit:K', value: 270 } }), /no known form or unit/],
    [period('07', { temperature: 275 }), /is the unit right\?/],
  ])('refuse what they do not understand: %#', (one, message) => {
    expect(readHourlyPeriods(answer(one))).toMatchObject({
      ok: false,
      faults: [{ message: expect.stringMatching(message) }],
    });
  });

  it('without any period are refused', () => {
    const read = readHourlyPeriods(answer());
    expect(!read.ok && read.faults.map(({ message }) => message)).toContain(
      'there are no hours; one row an hour is needed',
    );
  });
});
