import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import type { WeatherSet } from '../model.js';
import { slot } from '../slot.js';
import { Draws } from './draws.js';
import type { WeatherRisk } from './risk-model.js';
import { chanceOfLoss, sampleWeather } from './sample-weather.js';

const day = 4;
const chain = (
  lostAfterGood: number,
  lostAfterLost: number,
  part: Partial<WeatherRisk> = {},
): WeatherRisk => ({
  forecastUntil: slot(0),
  firstDay: slot(0),
  day,
  errorPerDay: 0,
  beyond: { kind: 'chain', months: [{ lostAfterGood, lostAfterLost }], monthOfDay: [0] },
  ...part,
});
const frost = { kind: 'limit', limitId: 'air', value: 20, hour: slot(0), text: 'below 40 °F' } as const;
const site: WeatherSet = {
  id: 'site',
  holds: [
    { from: slot(1), to: slot(3), cause: frost },
    { from: slot(9), to: slot(11), cause: frost },
    { from: slot(8), to: slot(9), cause: { kind: 'called', holdId: 'h', text: 'ice' } },
    { from: slot(12), to: slot(400), cause: { kind: 'unknown' } },
  ],
};

/** Which days of a horizon are lost from end to end. */
function lostDays(weather: WeatherRisk, days: number, sample: number): boolean[] {
  const [set] = sampleWeather([{ id: 's', holds: [] }], weather, days * day, new Draws(7, sample));
  return Array.from({ length: days }, (_, d) =>
    set!.holds.some(({ from, to }) => from <= d * day && (d + 1) * day <= to),
  );
}

describe('days by a chain of two states', () => {
  test('come in the shares and runs that its chances give', () => {
    // Stationary share a/(1 − b + a) and mean run 1/(1 − b) of a two-state Markov chain: any textbook, e.g. Wilks, Statistical Methods in
    // the Atmospheric Sciences, chapter on time series (from memory).
    const days = Array.from({ length: 40 }, (_, sample) => lostDays(chain(0.2, 0.6), 500, sample)).flat();
    const share = days.filter(Boolean).length / days.length;
    expect(Math.abs(share - 0.2 / (1 - 0.6 + 0.2))).toBeLessThan(0.012);
    const runs = days.filter((lost, d) => lost && days[d - 1] !== true).length;
    expect(Math.abs(days.filter(Boolean).length / runs - 1 / (1 - 0.6))).toBeLessThan(0.1);
    expect(chanceOfLoss({ lostAfterGood: 0.2, lostAfterLost: 0.6 }, undefined)).toBeCloseTo(1 / 3, 12);
    expect(chanceOfLoss({ lostAfterGood: 0, lostAfterLost: 1 }, undefined)).toBe(1);
  });

  test('change with the month', () => {
    const months = [
      { lostAfterGood: 0, lostAfterLost: 0 },
      { lostAfterGood: 1, lostAfterLost: 1 },
    ];
    const weather = chain(0, 0, { beyond: { kind: 'chain', months, monthOfDay: [0, 0, 1, 1, 0] } });
    expect(lostDays(weather, 6, 0)).toEqual([false, false, true, true, false, false]);
  });
});

describe('the forecast', () => {
  test('is kept where it stands; nothing is unknown in a sample', () => {
    const weather = chain(1, 1, { forecastUntil: slot(2 * day) });
    const [sampled] = sampleWeather([site], weather, 5 * day, new Draws(1, 0));
    expect(sampled!.holds.filter(({ cause }) => cause.kind !== 'limit' || cause.limitId !== 'drawn')).toEqual(
      [{ from: 1, to: 3, cause: frost }, site.holds[2]],
    );
    expect(sampled!.holds.at(-1)).toMatchObject({ from: 8, to: 20, cause: { limitId: 'drawn' } });
  });

  test('is believed less the further it looks', () => {
    const weather = chain(1, 1, { forecastUntil: slot(50 * day), errorPerDay: 0.1 });
    const lost = Array.from({ length: 400 }, (_, sample) => lostDays(weather, 20, sample));
    const share = (d: number): number => lost.filter((days) => days[d]).length / lost.length;
    expect(share(0)).toBe(0);
    expect(Math.abs(share(3) - 0.3)).toBeLessThan(0.08);
    expect(Math.abs(share(7) - 0.7)).toBeLessThan(0.08);
    expect(share(12)).toBe(1);
  });

  test('of a first day that has begun counts too', () => {
    const weather = chain(1, 1, { firstDay: slot(2) });
    const [sampled] = sampleWeather([site], weather, 10, new Draws(1, 0));
    expect(sampled!.holds.at(-1)).toMatchObject({ from: 0, to: 10 });
  });
});

test('years that have been come whole, after the forecast, each in its turn', () => {
  const years = [[{ from: slot(0), to: slot(6) }], [{ from: slot(10), to: slot(12) }], []];
  const weather = chain(0, 0, { forecastUntil: slot(day), beyond: { kind: 'years', years } });
  const seen = Array.from({ length: 60 }, (_, sample) =>
    JSON.stringify(
      sampleWeather([{ id: 's', holds: [] }], weather, 16, new Draws(3, sample))[0]!.holds.map(
        ({ from, to }) => [from, to],
      ),
    ),
  );
  expect(new Set(seen)).toEqual(new Set(['[[4,6]]', '[[10,12]]', '[]']));
});

test('draws are the same for the same names, and evenly spread', () => {
  fc.assert(
    fc.property(fc.nat(), fc.nat(), fc.string(), (seed, sample, key) => {
      const u = new Draws(seed, sample).uniform(key);
      expect(u).toBe(new Draws(seed, sample).uniform(key));
      expect(u > 0 && u < 1).toBe(true);
    }),
  );
  const many = Array.from({ length: 20_000 }, (_, sample) => new Draws(1, sample).uniform('a'));
  const other = Array.from({ length: 20_000 }, (_, sample) => new Draws(1, sample).uniform('b'));
  const mean = (list: number[]): number => list.reduce((sum, x) => sum + x, 0) / list.length;
  // Ten bins: chi-square with nine degrees of freedom stays under 27.9 in 999 of 1,000 cases (table value, from memory).
  const bins = new Array<number>(10).fill(0);
  for (const u of many) bins[Math.floor(10 * u)]!++;
  expect(bins.reduce((sum, count) => sum + (count - 2000) ** 2 / 2000, 0)).toBeLessThan(27.9);
  const covariance = mean(many.map((u, i) => (u - 0.5) * (other[i]! - 0.5)));
  expect(Math.abs(covariance * 12)).toBeLessThan(0.03);
  const normals = Array.from({ length: 20_000 }, (_, sample) => new Draws(2, sample).normal('z'));
  expect(Math.abs(mean(normals))).toBeLessThan(0.03);
  expect(Math.abs(mean(normals.map((z) => z * z)) - 1)).toBeLessThan(0.04);
});
