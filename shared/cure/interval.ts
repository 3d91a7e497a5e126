import { celsius, type Celsius } from '../units/temperature.js';
import { hours, hoursBetween, type EpochMs, type Hours } from '../units/time.js';

/** A stretch of a temperature history, straight from one temperature to the next. */
export interface CureInterval {
  readonly hours: Hours;
  readonly from: Celsius;
  readonly to: Celsius;
}

/** One point of a temperature history. */
export interface CurePoint {
  readonly at: EpochMs;
  readonly temperature: Celsius;
}

/** Temperature in the middle of an interval. */
export const meanOf = ({ from, to }: CureInterval): Celsius => celsius((from + to) / 2);

/** Intervals of constant temperature from two lists of equal length. */
export function steadyIntervals(
  durations: readonly Hours[],
  temperatures: readonly Celsius[],
): CureInterval[] {
  if (durations.length !== temperatures.length) {
    throw new RangeError(
      `${durations.length} durations for ${temperatures.length} temperatures; give as many of each`,
    );
  }
  return durations.map((duration, i) => {
    const temperature = temperatures[i] ?? celsius(0);
    return { hours: duration, from: temperature, to: temperature };
  });
}

/** Intervals between points in order of time; of two points at one instant the colder counts. */
export function intervalsBetween(points: readonly CurePoint[]): CureInterval[] {
  const inTime = [...points].sort((a, b) => a.at - b.at || a.temperature - b.temperature);
  const once = inTime.filter((point, i) => point.at !== inTime[i - 1]?.at);
  return once.slice(1).map((to, i) => {
    const from = once[i] ?? to;
    return { hours: hoursBetween(from.at, to.at), from: from.temperature, to: to.temperature };
  });
}

/** Total time of a history. */
export const totalHours = (intervals: readonly CureInterval[]): Hours =>
  hours(intervals.reduce((sum, interval) => sum + interval.hours, 0));
