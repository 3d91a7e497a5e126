import { toCelsius } from '../units/temperature.js';
import { HOUR_MS, type EpochMs } from '../units/time.js';
import { intervalsBetween, type CureInterval, type CurePoint } from './interval.js';
import type { ConcreteReading, CurePlacement } from './placement.js';

/** Longest stretch between two readings that counts as measured, h. Common practice, no source. */
export const LONGEST_GAP_HOURS = 12;

/** A stretch too long to be called measured. */
export interface ReadingGap {
  readonly from: EpochMs;
  readonly to: EpochMs;
}

/** What was measured of a placement, and what was not. */
export interface MeasuredHistory {
  readonly points: readonly CurePoint[];
  readonly intervals: readonly CureInterval[];
  /** These add nothing to the strength: between two readings that far apart it may have frozen. */
  readonly gaps: readonly ReadingGap[];
}

/** The history from placing to the last reading up to `until`; readings from before the placing are left out. */
export function measuredHistory(
  placement: CurePlacement,
  readings: readonly ConcreteReading[],
  until: EpochMs,
): MeasuredHistory {
  const taken = readings
    .filter((reading) => reading.at > placement.placedAt && reading.at <= until)
    .map((reading) => ({ at: reading.at, temperature: toCelsius(reading.concrete) }));
  const placed = { at: placement.placedAt, temperature: toCelsius(placement.placedTemperature) };
  const points = [placed, ...taken.sort((a, b) => a.at - b.at || a.temperature - b.temperature)];
  const steps = points.slice(1).map((to, i) => ({ from: points[i] ?? to, to }));
  const far = steps.filter(({ from, to }) => to.at - from.at > LONGEST_GAP_HOURS * HOUR_MS);
  return {
    points,
    intervals: steps
      .filter((step) => !far.includes(step))
      .flatMap(({ from, to }) => intervalsBetween([from, to])),
    gaps: far.map(({ from, to }) => ({ from: from.at, to: to.at })),
  };
}
