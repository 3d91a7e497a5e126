import { describe, expect, it } from '@jest/globals';
import { inches } from '../../units/length.js';
import { fahrenheit } from '../../units/temperature.js';
import { epochMs, HOUR_MS, hours } from '../../units/time.js';
import { coolingRate, fastestCooling } from './cooling-rate.js';
import { countedFormHours } from './form-time.js';
import { largestDifference } from './largest-difference.js';
import { mixingTemperatureLimit } from './mixing-temperature-limit.js';
import { placingTemperature } from './placing-temperature.js';
import { sectionLimits } from './section-table.js';

const history = (...pairs: [number, number][]) =>
  pairs.map(([hour, t]) => ({ at: epochMs(hour * HOUR_MS), temperature: fahrenheit(t) }));

describe('placing', () => {
  it('is refused at 54.9 °F for a small section and says what to ask for', () => {
    expect(placingTemperature(inches(10), fahrenheit(55)).ok).toBe(true);
    const finding = placingTemperature(inches(10), fahrenheit(54.9));
    expect(finding).toMatchObject({ ok: false, limit: 'at least 55 °F for a section of 10 in' });
    expect(finding.text).toContain('ask the plant');
  });

  it('asks for warmer concrete the colder the air', () => {
    const ok = (air: number, mixed: number) =>
      mixingTemperatureLimit(inches(10), fahrenheit(air), fahrenheit(mixed)).ok;
    expect([ok(31, 60), ok(30, 60), ok(30, 65), ok(-1, 65), ok(-1, 70)]).toEqual([
      true,
      false,
      true,
      false,
      true,
    ]);
  });

  it('wants a section', () => {
    expect(() => sectionLimits(inches(0))).toThrow('give its least dimension');
    expect([36, 36.1, 72, 72.1].map((least) => sectionLimits(inches(least)).placed)).toEqual([
      50, 45, 45, 40,
    ]);
  });
});

describe('cooling', () => {
  it('is looked at within each hour, also over several readings', () => {
    expect(fastestCooling(history([0, 60], [0.5, 57], [1, 54]))).toEqual({ hourly: 6, daily: 6 });
    expect(coolingRate(history([0, 60], [0.5, 57], [1, 54])).ok).toBe(false);
  });

  it('over a longer step is shared out by the hour', () => {
    expect(fastestCooling(history([0, 60], [4, 44]))).toEqual({ hourly: 4, daily: 16 });
  });

  it('of a larger section may be less in a day', () => {
    const day = history([0, 70], [12, 48], [24, 29]);
    expect(coolingRate(day).ok).toBe(true);
    expect(coolingRate(day, sectionLimits(inches(24)).drop).ok).toBe(false);
  });

  it('is none while it warms, or before there are two readings', () => {
    expect(fastestCooling(history([0, 40], [1, 60]))).toEqual({ hourly: 0, daily: 0 });
    expect(coolingRate([]).ok).toBe(true);
  });
});

describe('other limits', () => {
  it('50 °F itself does not count for a form', () => {
    expect(countedFormHours([{ hours: hours(9), air: fahrenheit(50) }])).toBe(0);
  });

  it('a wall has a thickness', () => {
    expect(() => largestDifference(0, 1, 10)).toThrow('thickness over 0 m');
  });
});
