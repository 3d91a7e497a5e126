import { describe, expect, it } from '@jest/globals';
import { arrheniusRate, en1992Rate, equivalentAge, fhpRate } from '../../shared/cure/equivalent-age.js';
import { intervalsBetween, steadyIntervals } from '../../shared/cure/interval.js';
import { temperatureTimeFactor } from '../../shared/cure/nurse-saul.js';
import { celsius, fahrenheit, toCelsius } from '../../shared/units/temperature.js';
import { epochMs, hours, HOUR_MS } from '../../shared/units/time.js';

const steady = (days: number[], temperatures: number[]) =>
  steadyIntervals(
    days.map((day) => hours(day * 24)),
    temperatures.map(celsius),
  );

// Source: open reference implementation of structural codes, its own test of EC2 creep and shrinkage (recomputed).
describe('EN 1992-1-1 eq. B.10', () => {
  it('19 to 23 °C over eight days is 8.37986781 d', () => {
    const intervals = steady([1, 2, 1, 1, 1, 2], [19, 20, 20, 21, 22, 23]);
    expect(equivalentAge(intervals, en1992Rate) / 24).toBeCloseTo(8.37986781, 6);
  });

  // Source: the same implementation, its test of the fib Model Code 2010 (recomputed).
  it('7 d at 20 and 7 d at 25 °C is 15.7723 d', () => {
    expect(equivalentAge(steady([7, 7], [20, 25]), en1992Rate) / 24).toBeCloseTo(15.7723, 4);
  });

  it('lists of unequal length fail', () => {
    expect(() => steady([7, 7], [20])).toThrow('2 durations for 1 temperatures');
  });
});

// Published: textbook convention of Nurse and Saul with a datum of −11 °C.
describe('Nurse–Saul', () => {
  it('28 d at 18 °C is 19 488 °C·h', () => {
    expect(temperatureTimeFactor(steady([28], [18]), celsius(-11))).toBe(19_488);
  });

  // Published exercise; 112 is what a wrong sign gives.
  it('28 d at 15 °C is 728 °C·d', () => {
    expect(temperatureTimeFactor(steady([28], [15]), celsius(-11)) / 24).toBe(728);
  });

  // Published: seminar on ACI 306.1 and ASTM C1074; form also Iowa DOT IM 383.
  it('1 h at 44 °F over a datum of 14 °F is 30 °F·h', () => {
    const at = toCelsius(fahrenheit(44));
    const factor = temperatureTimeFactor(steadyIntervals([hours(1)], [at]), toCelsius(fahrenheit(14)));
    expect((factor * 9) / 5).toBeCloseTo(30, 10);
  });
});

// Computed by hand: a cooling history, means of intervals.
describe('a history that cools from 15 to 2 °C over three days', () => {
  const points = [
    [0, 15],
    [6, 18],
    [12, 22],
    [24, 20],
    [36, 14],
    [48, 8],
    [60, 4],
    [72, 2],
  ].map(([hour = 0, temperature = 0]) => ({
    at: epochMs(hour * HOUR_MS),
    temperature: celsius(temperature),
  }));
  const intervals = intervalsBetween(points);

  it('has the temperature–time factors', () => {
    expect(temperatureTimeFactor(intervals, celsius(0))).toBeCloseTo(915, 2);
    expect(temperatureTimeFactor(intervals, celsius(-10))).toBeCloseTo(1635, 2);
  });

  it('has the equivalent ages by Arrhenius with Q = 5000 K', () => {
    expect(equivalentAge(intervals, arrheniusRate(5000, celsius(20)))).toBeCloseTo(49.936, 2);
    expect(equivalentAge(intervals, arrheniusRate(5000, celsius(23)))).toBeCloseTo(42.005, 2);
  });

  it('has the equivalent age by Freiesleben Hansen and Pedersen', () => {
    expect(equivalentAge(intervals, fhpRate)).toBeCloseTo(46.966, 2);
  });

  it('has the equivalent age by EN 1992', () => {
    expect(equivalentAge(intervals, en1992Rate)).toBeCloseTo(52.988, 2);
  });
});
