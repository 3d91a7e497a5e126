import { epochMs, HOUR_MS, type EpochMs } from '../units/time.js';
import type { Forecast, ForecastHour } from './forecast.js';

/** A forecast hour by hour without gaps: an hour that it leaves out is null. */
export interface HourGrid {
  /** Begin of the first hour. */
  readonly start: EpochMs;
  readonly hours: readonly (ForecastHour | null)[];
}

/** The hours of a forecast from its first to its last; null when it has none. */
export function hourGrid({ hours }: Forecast): HourGrid | null {
  const [first] = hours;
  const last = hours.at(-1);
  if (!first || !last) return null;
  const grid = new Array<ForecastHour | null>(Math.round((last.at - first.at) / HOUR_MS) + 1).fill(null);
  for (const hour of hours) grid[Math.round((hour.at - first.at) / HOUR_MS)] = hour;
  return { start: first.at, hours: grid };
}

/** Begin of an hour of the grid, or of one before or after it. */
export const beginOf = ({ start }: HourGrid, index: number): EpochMs => epochMs(start + index * HOUR_MS);
