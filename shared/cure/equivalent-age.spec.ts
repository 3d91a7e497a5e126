import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { celsius } from '../units/temperature.js';
import { epochMs, hours, HOUR_MS } from '../units/time.js';
import { arrheniusRate, en1992Rate, equivalentAge, fhpRate, type AgeRate } from './equivalent-age.js';
import { intervalsBetween, meanOf, steadyIntervals, totalHours } from './interval.js';
import { nurseSaulAge, temperatureTimeFactor } from './nurse-saul.js';

const RATES: [string, AgeRate][] = [
  ['Arrhenius', arrheniusRate(5000, celsius(20))],
  ['Freiesleben Hansen and Pedersen', fhpRate],
  ['EN 1992', en1992Rate],
];
const steady = (time: number, temperature: number) => steadyIntervals([hours(time)], [celsius(temperature)]);
const anyTime = fc.double({ min: 0.1, max: 500, noNaN: true });
const anyTemperature = fc.double({ min: -20, max: 40, noNaN: true });

describe.each(RATES)('equivalent age by %s', (_, rate) => {
  it('at 20 °C is the time that passed', () => {
    // EN 1992 rounds its constants: within a thousandth of a part.
    fc.assert(
      fc.property(anyTime, (time) => {
        expect(equivalentAge(steady(time, 20), rate) / time).toBeCloseTo(1, 2);
      }),
    );
  });

  it('is not changed by splitting a steady interval', () => {
    fc.assert(
      fc.property(
        anyTime,
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        anyTemperature,
        (time, part, t) => {
          const split = steadyIntervals(
            [hours(time * part), hours(time * (1 - part))],
            [celsius(t), celsius(t)],
          );
          expect(equivalentAge(split, rate)).toBeCloseTo(equivalentAge(steady(time, t), rate), 6);
        },
      ),
    );
  });

  it('grows with every hour above freezing, and not at all below', () => {
    fc.assert(
      fc.property(anyTime, anyTemperature, (time, t) => {
        const age = equivalentAge(steady(time, t), rate);
        if (t < 0) expect(age).toBe(0);
        else expect(age).toBeGreaterThan(0);
      }),
    );
  });

  it('counts a warmer hour for more', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 39, noNaN: true }), (t) => {
        expect(rate(celsius(t + 1))).toBeGreaterThan(rate(celsius(t)));
      }),
    );
  });
});

describe('near freezing', () => {
  // The factor that moves the schedule: an hour at 0 °C counts 0 to 0.37 h depending on the form.
  it('the forms disagree, the default pair being the cautious one', () => {
    const hour = steady(1, 0);
    expect(nurseSaulAge(hour)).toBe(0);
    expect(equivalentAge(hour, fhpRate)).toBeGreaterThan(0.1);
    expect(equivalentAge(hour, en1992Rate)).toBeGreaterThan(equivalentAge(hour, fhpRate));
    expect(nurseSaulAge(hour, celsius(-10))).toBeCloseTo(1 / 3, 10);
  });
});

describe('the temperature–time factor', () => {
  it('adds nothing at or under the datum', () => {
    fc.assert(
      fc.property(anyTime, fc.double({ min: -40, max: 0, noNaN: true }), (time, t) => {
        expect(temperatureTimeFactor(steady(time, t))).toBe(0);
      }),
    );
  });

  it('counts only the part of a falling line that is above the datum', () => {
    // Computed by hand: from 10 to −10 °C in 10 h, a triangle of 10 × 5 h / 2.
    const falling = [{ hours: hours(10), from: celsius(10), to: celsius(-10) }];
    expect(temperatureTimeFactor(falling)).toBeCloseTo(25, 10);
    expect(temperatureTimeFactor([{ hours: hours(10), from: celsius(-10), to: celsius(10) }])).toBeCloseTo(
      25,
      10,
    );
  });

  it('is not changed by splitting a line anywhere', () => {
    fc.assert(
      fc.property(
        anyTemperature,
        anyTemperature,
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (from, to, part) => {
          const middle = celsius(from + (to - from) * part);
          const whole = [{ hours: hours(24), from: celsius(from), to: celsius(to) }];
          const halves = [
            { hours: hours(24 * part), from: celsius(from), to: middle },
            { hours: hours(24 * (1 - part)), from: middle, to: celsius(to) },
          ];
          expect(temperatureTimeFactor(halves)).toBeCloseTo(temperatureTimeFactor(whole), 6);
        },
      ),
    );
  });
});

describe('intervals', () => {
  const point = (hour: number, temperature: number) => ({
    at: epochMs(hour * HOUR_MS),
    temperature: celsius(temperature),
  });

  it('lie between points in time, whatever their order in the list', () => {
    const ordered = intervalsBetween([point(0, 10), point(6, 12), point(8, 9)]);
    expect(intervalsBetween([point(8, 9), point(0, 10), point(6, 12)])).toEqual(ordered);
    expect(ordered.map((interval) => interval.hours)).toEqual([6, 2]);
    expect(totalHours(ordered)).toBe(8);
  });

  it('take the colder of two points at one instant', () => {
    expect(intervalsBetween([point(0, 10), point(6, 12), point(6, 4)])).toEqual([
      { hours: 6, from: 10, to: 4 },
    ]);
  });

  it('are none for a point alone', () => {
    expect(intervalsBetween([point(0, 10)])).toEqual([]);
    expect(intervalsBetween([])).toEqual([]);
  });

  it('have their mean in the middle', () => {
    expect(meanOf({ hours: hours(1), from: celsius(4), to: celsius(10) })).toBe(7);
  });
});
