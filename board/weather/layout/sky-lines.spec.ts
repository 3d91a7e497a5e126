import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { makeAxis } from '../../board/layout/axis.js';
import { daysFrom } from '../../time/zone-days.js';
import { hoursFrom, trialHour } from '../testing/trial-weather.js';
import { skyLines } from './sky-lines.js';
import { STRIP } from './strip-measures.js';

const axis = makeAxis(daysFrom('2031-01-13', 3, 'America/New_York'), 80);
const MONDAY = '2031-01-13T05:00:00Z';

/** The points of a path. */
const points = (path: string) =>
  [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));

describe('the course of the temperature', () => {
  it('stands higher the warmer it is, and crosses the level of 32 °F where the air does', () => {
    const { temperature, freezing } = skyLines(
      hoursFrom(MONDAY, 3, (hour) => ({ temperatureF: [20, 32, 44][hour] ?? 0 })),
      axis,
    );
    const [cold, level, warm] = points(temperature).map(({ y }) => y);
    expect(cold).toBe(STRIP.traceBottom);
    expect(level).toBe(freezing);
    expect(warm).toBe(STRIP.traceTop);
  });

  it('goes through the middle of each hour', () => {
    const [first] = points(skyLines([trialHour(MONDAY)], axis).temperature);
    expect(first?.x).toBeCloseTo(axis.x(Date.parse(MONDAY) + 30 * 60_000), 1);
  });

  it('is broken where an hour is missing or has no temperature: unknown is not drawn', () => {
    const hours = hoursFrom(MONDAY, 6, (hour) => (hour === 2 ? { temperatureF: null } : {}));
    const { temperature } = skyLines([...hours.slice(0, 4), ...hours.slice(5)], axis);
    expect([...temperature.matchAll(/M/g)]).toHaveLength(3);
    expect(points(temperature)).toHaveLength(4);
  });

  it('stays within its field, whatever the weather', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -60, max: 130 }), { maxLength: 80 }), (temperatures) => {
        const lines = skyLines(
          hoursFrom(MONDAY, temperatures.length, (hour) => ({ temperatureF: temperatures[hour] ?? null })),
          axis,
        );
        for (const { x, y } of points(lines.temperature)) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(axis.width);
          expect(y).toBeGreaterThanOrEqual(STRIP.traceTop);
          expect(y).toBeLessThanOrEqual(STRIP.traceBottom);
        }
      }),
    );
  });
});

describe('rain', () => {
  const rain = (inches: number | null) => skyLines([trialHour(MONDAY, { rainInches: inches })], axis).rain[0];

  it('is a column over its hour, taller for more', () => {
    const [little, much] = [rain(0.02), rain(0.15)];
    expect(little?.x).toBeCloseTo(axis.x(Date.parse(MONDAY)), 1);
    expect(much?.height).toBeGreaterThan(little?.height ?? Infinity);
    expect((much?.y ?? 0) + (much?.height ?? 0)).toBe(STRIP.traceBottom);
  });

  it('is none where it is dry or unknown, and no cloudburst leaves the field', () => {
    expect([rain(0), rain(0.004), rain(null)]).toEqual([undefined, undefined, undefined]);
    expect(rain(9)?.height).toBe(STRIP.traceBottom - STRIP.traceTop);
  });
});

describe('wind', () => {
  const strokes = (windMph: number | null) =>
    [...skyLines([trialHour('2031-01-13T15:00:00Z', { windMph })], axis).wind.matchAll(/M/g)].length;

  it.each([
    [null, 0],
    [9.9, 0],
    [10, 1],
    [25, 2],
    [90, 4],
  ])('of %s mph is %s strokes', (mph, count) => {
    expect(strokes(mph)).toBe(count);
  });

  it('is the windiest hour of each half of a day', () => {
    const day = hoursFrom(MONDAY, 24, (hour) => ({ windMph: hour === 9 ? 22 : hour === 15 ? 31 : 3 }));
    expect([...skyLines(day, axis).wind.matchAll(/M/g)]).toHaveLength(2 + 3);
  });
});
