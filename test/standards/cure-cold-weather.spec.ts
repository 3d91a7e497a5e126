import { describe, expect, it } from '@jest/globals';
import { carbonMonoxide, partsPerMillion } from '../../shared/cure/rules/carbon-monoxide.js';
import { coolingRate } from '../../shared/cure/rules/cooling-rate.js';
import { formTime } from '../../shared/cure/rules/form-time.js';
import { largestDifference } from '../../shared/cure/rules/largest-difference.js';
import { masonryLoad } from '../../shared/cure/rules/masonry-load.js';
import { freezingProtectionDays, protectionDays } from '../../shared/cure/rules/protection-days.js';
import { protectionRemoval } from '../../shared/cure/rules/protection-removal.js';
import { asMixed, sectionLimits } from '../../shared/cure/rules/section-table.js';
import { differenceToCelsius, fahrenheit, fahrenheitDegrees } from '../../shared/units/temperature.js';
import { inches } from '../../shared/units/length.js';
import { epochMs, HOUR_MS, hours } from '../../shared/units/time.js';

// Published: ACI 306.1-90 in Beall 2004, fig. 3-37.
describe('sections in cold weather', () => {
  it.each([
    [11, 55, [60, 65, 70], 50],
    [12, 50, [55, 60, 65], 40],
    [24, 50, [55, 60, 65], 40],
    [48, 45, [50, 55, 60], 30],
    [73, 40, [45, 50, 55], 20],
  ])('of %p in: %p °F as placed, %p as mixed, %p °F a day', (least, placed, mixed, drop) => {
    expect(sectionLimits(inches(least))).toEqual({ placed, mixed, drop });
    expect([31, 30, -1].map((air) => asMixed(inches(least), fahrenheit(air)))).toEqual(mixed);
    expect(asMixed(inches(least), fahrenheit(0))).toBe(mixed[1]);
  });
});

// Published: ACI 306.1-90 in Beall 2004, fig. 3-38.
describe('days of protection', () => {
  it.each([
    ['no-load', 2, 1],
    ['no-load-exposed', 3, 2],
    ['partial-load-exposed', 6, 4],
  ] as const)('%s: %p, accelerated %p', (service, plain, accelerated) => {
    expect(protectionDays(service, false)).toBe(plain);
    expect(protectionDays(service, true)).toBe(accelerated);
  });

  it('against freezing alone: 3, accelerated 2; a full load goes by strength', () => {
    expect([freezingProtectionDays(false), freezingProtectionDays(true)]).toEqual([3, 2]);
    expect(protectionDays('full-load', true)).toEqual({ by: 'strength' });
  });
});

// Published: Concrete Construction on ACI 306.1-90 §3.2.3.
describe('taking protection off', () => {
  it('a surface of 60 °F in air at 0 °F stays covered on day 3', () => {
    expect(protectionRemoval(fahrenheit(60), fahrenheit(0)).ok).toBe(false);
  });

  it('within 20 °F of the air it may come off', () => {
    expect(protectionRemoval(fahrenheit(20), fahrenheit(0)).ok).toBe(true);
    expect(protectionRemoval(fahrenheit(20.1), fahrenheit(0)).ok).toBe(false);
  });
});

// Published: UFGS 03 30 00.
describe('cooling', () => {
  const history = (...pairs: [number, number][]) =>
    pairs.map(([hour, t]) => ({ at: epochMs(hour * HOUR_MS), temperature: fahrenheit(t) }));

  it('5.1 °F in an hour is refused, 5 °F is not', () => {
    expect(coolingRate(history([0, 60], [1, 54.9])).ok).toBe(false);
    expect(coolingRate(history([0, 60], [1, 55])).ok).toBe(true);
  });

  it('more than 50 °F in 24 h is refused', () => {
    expect(coolingRate(history([0, 90], [12, 65], [24, 40])).ok).toBe(true);
    expect(coolingRate(history([0, 90], [12, 65], [24, 39.9])).ok).toBe(false);
    expect(coolingRate(history([0, 90], [12, 65], [25, 39.9])).ok).toBe(true);
  });
});

// Published: CSA A23.1 via the Cement Association of Canada handbook, ch. 17.
describe('largest difference to the air', () => {
  it.each([
    [0.3, [29, 22, 19, 17, 12]],
    [0.6, [22, 18, 16, 15, 12]],
  ])('%p m', (thickness, degrees) => {
    expect([0, 3, 5, 7, 20].map((ratio) => largestDifference(thickness, ratio, 25))).toEqual(degrees);
  });

  it('between entries, beyond the table and in more wind the stricter counts', () => {
    expect(largestDifference(0.3, 1, 25)).toBe(22);
    expect(largestDifference(0.4, 0, 25)).toBe(22);
    expect(largestDifference(0.3, 30, 25)).toBe(12);
    expect(largestDifference(1, 0, 10)).toBe(12);
    expect(largestDifference(0.3, 0, 26)).toBe(12);
  });
});

// Published: ACI 347 in Concrete Construction.
describe('forms that need 12 h above 50 °F', () => {
  const part = (time: number, air: number) => ({ hours: hours(time), air: fahrenheit(air) });

  it('come off only after the last 4 h: colder hours do not count', () => {
    const history = [part(8, 55), part(10, 45), part(4, 60)];
    expect(formTime(history.slice(0, 2)).ok).toBe(false);
    expect(formTime([...history.slice(0, 2), part(3.9, 60)]).ok).toBe(false);
    expect(formTime(history).ok).toBe(true);
  });
});

// Published: UFGS 04 20 00.
describe('loads on masonry', () => {
  it('uniform after 12 h, concentrated after 72 h', () => {
    expect([11.9, 12].map((since) => masonryLoad('uniform', hours(since)).ok)).toEqual([false, true]);
    expect([71.9, 72].map((since) => masonryLoad('concentrated', hours(since)).ok)).toEqual([false, true]);
  });
});

// Limits published: OSHA and NIOSH. Numbers computed by hand.
describe('carbon monoxide over a shift', () => {
  const shift = (...parts: [number, number][]) =>
    carbonMonoxide(parts.map(([time, ppm]) => ({ hours: hours(time), concentration: partsPerMillion(ppm) })));

  it.each([
    [60, 20, '40 ppm'],
    [80, 10, '45 ppm'],
  ])('4 h at %p and 4 h at %p ppm is %s: under 50, over 35', (first, second, mean) => {
    const [osha, niosh, ceiling] = shift([4, first], [4, second]);
    expect(osha).toMatchObject({ ok: true, measured: `${mean} over 8 h` });
    expect(niosh).toMatchObject({ ok: false });
    expect(ceiling).toMatchObject({ ok: true });
  });

  it('over 200 ppm for a minute is over the ceiling', () => {
    expect(shift([1 / 60, 201])[2]).toMatchObject({ ok: false });
  });
});

// Computed by hand.
describe('a difference of 50 °F', () => {
  it('is 27.8 °C, not 10 °C', () => {
    expect(differenceToCelsius(fahrenheitDegrees(50))).toBeCloseTo(27.8, 1);
  });
});
