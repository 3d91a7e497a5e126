import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { HOUR_MS } from '../../units/time.js';
import { readGridpoint } from './read-gridpoint.js';

const START = Date.parse('2031-01-06T12:00:00Z');
const at = (hour: number) => new Date(START + hour * HOUR_MS).toISOString().replace('.000Z', '+00:00');
const value = (hour: number, hours: number, number: number | null) => ({
  validTime: `${at(hour)}/PT${hours}H`,
  value: number,
});

/** An answer in the published shape: a unit code and values over intervals for each quantity. */
const answer = (series: Record<string, unknown> = {}) => ({
  type: 'Feature',
  properties: {
    updateTime: '2031-01-06T11:40:00+00:00',
    temperature: { uom: 'wmoUnit:degC', values: [value(0, 2, 0), value(2, 1, -5)] },
    ...series,
  },
});

describe('the gridpoint series', () => {
  it('hold over their intervals, and are converted once', () => {
    const read = readGridpoint(
      answer({
        dewpoint: { uom: 'wmoUnit:degC', values: [value(0, 3, -10)] },
        windSpeed: { uom: 'wmoUnit:km_h-1', values: [value(0, 3, 16.09344)] },
        windGust: { uom: 'wmoUnit:km_h-1', values: [value(0, 1, 32.18688)] },
        probabilityOfPrecipitation: { uom: 'wmoUnit:percent', values: [value(1, 2, 40)] },
        quantitativePrecipitation: { uom: 'wmoUnit:mm', values: [value(0, 2, 25.4)] },
      }),
    );
    const [first, second, third] = read.ok ? read.forecast.hours : [];
    // 0 °C is 32 °F, a mile 1.609344 km, an inch 25.4 mm: exact by definition (NIST SP 811). The rain falls evenly.
    expect(first).toEqual({
      at: START,
      temperature: 32,
      dewPoint: 14,
      wind: 10,
      gust: 20,
      rainChance: null,
      rainAmount: 0.5,
    });
    expect(second).toMatchObject({ temperature: 32, gust: null, rainChance: 40, rainAmount: 0.5 });
    expect(third).toMatchObject({ temperature: 23, rainChance: 40, rainAmount: null });
    expect(read.ok && read.forecast.issuedAt).toBe(Date.parse('2031-01-06T11:40:00Z'));
  });

  it('rain as much in their hours as in their intervals', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 60 })), {
          minLength: 1,
          maxLength: 12,
        }),
        (spans) => {
          let hour = 0;
          const values = spans.map(([hours, millimetres]) => {
            hour += hours;
            return value(hour - hours, hours, millimetres);
          });
          const read = readGridpoint({
            properties: {
              updateTime: at(0),
              temperature: { uom: 'wmoUnit:degC', values: [value(0, hour, 5)] },
              quantitativePrecipitation: { uom: 'wmoUnit:mm', values },
            },
          });
          const fallen = read.ok
            ? read.forecast.hours.reduce((sum, { rainAmount }) => sum + (rainAmount ?? 0), 0)
            : NaN;
          expect(fallen * 25.4).toBeCloseTo(
            spans.reduce((sum, [, millimetres]) => sum + millimetres, 0),
            6,
          );
        },
      ),
    );
  });

  it('with a gap say so, and the hours in it stay out', () => {
    const temperature = { uom: 'wmoUnit:degC', values: [value(0, 1, 5), value(4, 1, 5)] };
    const read = readGridpoint(answer({ temperature }));
    expect(read).toMatchObject({ ok: true, notes: [{ message: expect.stringMatching(/3 hours before/) }] });
    expect(read.ok && read.forecast.hours).toHaveLength(2);
  });

  it('with nulls are unknown there', () => {
    const temperature = { uom: 'wmoUnit:degC', values: [value(0, 1, null), value(1, 1, 4)] };
    const read = readGridpoint(answer({ temperature }));
    expect(read.ok && read.forecast.hours.map((hour) => hour.temperature)).toEqual([null, 39.2]);
  });

  it.each([
    ['an unknown unit', { uom: 'wmoUnit:K', values: [value(0, 1, 270)] }, /unit "wmoUnit:K" is not known/],
    ['no unit', { values: [value(0, 1, 5)] }, /unit "" is not known/],
    ['°F called °C', { uom: 'wmoUnit:degC', values: [value(0, 1, 75)] }, /is the unit right\?/],
    ['no interval', { uom: 'wmoUnit:degC', values: [{ validTime: at(0), value: 5 }] }, /no interval/],
    ['a text', { uom: 'wmoUnit:degC', values: [{ validTime: `${at(0)}/PT1H`, value: '5' }] }, /no number/],
    ['months', { uom: 'wmoUnit:degC', values: [value(0, 24 * 40, 5)] }, /no interval/],
  ])('with %s are refused as a whole', (_what, temperature, message) => {
    expect(readGridpoint(answer({ temperature }))).toMatchObject({
      ok: false,
      faults: [{ message: expect.stringMatching(message) }],
    });
  });

  it.each([[null], ['<html>'], [{}], [{ properties: {} }], [[]]])('are not found in %p', (other) => {
    expect(readGridpoint(other)).toMatchObject({
      ok: false,
      faults: [{ message: expect.stringMatching(/no gridpoint/) }],
    });
  });

  it('without a time of issue are refused: nobody could tell their age', () => {
    const { properties } = answer();
    expect(readGridpoint({ properties: { ...properties, updateTime: undefined } })).toMatchObject({
      ok: false,
      faults: [{ message: expect.stringMatching(/issued_at is missing/) }],
    });
  });
});
