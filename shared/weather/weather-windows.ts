import { epochMs, type EpochMs } from '../units/time.js';
import type { Forecast } from './forecast.js';
import { hourGrid } from './hour-grid.js';
import { limitHours, worstWithin } from './limit-hours.js';
import { clip, merge, subtract, type Stretch } from './stretch.js';
import type { WeatherCause } from './weather-cause.js';
import type { WeatherLimit } from './weather-limit.js';

/** A stretch in which the work may not run, with one cause for each limit, in the order of the limits. */
export interface ClosedStretch extends Stretch {
  readonly causes: readonly WeatherCause[];
}

/** When work may run between two instants, as far as the forecast knows. */
export interface WeatherWindows {
  /** In order of time, none touching another. */
  readonly closed: readonly ClosedStretch[];
  /** Time before `unknownAfter` of which the forecast says too little, and that is not closed anyway. Never fair. */
  readonly unknown: readonly Stretch[];
  /** From here on the forecast cannot tell; null when it can to the end. */
  readonly unknownAfter: EpochMs | null;
}

/** What stands at the site. */
export interface WeatherOptions {
  /** Protection in place for the work: kinds of equipment such as `enclosure` or `blanket`. */
  readonly protection?: readonly string[];
}

/** The limits that the protection in place does not lift. */
export function standingLimits(
  limits: readonly WeatherLimit[],
  { protection = [] }: WeatherOptions,
): readonly WeatherLimit[] {
  return limits.filter((limit) => !limit.liftedBy.some((kind) => protection.includes(kind)));
}

/**
 * Windows for work under `limits` from `from` up to `to`. A limit that looks ahead closes the hours before the bad
 * one as well, and cannot tell about the last hours of a forecast.
 */
export function weatherWindows(
  limits: readonly WeatherLimit[],
  forecast: Forecast,
  from: EpochMs,
  to: EpochMs,
  options: WeatherOptions = {},
): WeatherWindows {
  const standing = standingLimits(limits, options);
  if (standing.length === 0 || to <= from) return { closed: [], unknown: [], unknownAfter: null };
  const grid = hourGrid(forecast);
  if (!grid) return { closed: [], unknown: [], unknownAfter: from };
  const read = standing.map((limit) => limitHours(limit, grid, { from, to }));
  const closed = merge(read.flatMap(({ broken }) => broken.map(({ stretch }) => stretch))).map((stretch) => ({
    ...stretch,
    causes: read.flatMap((one) => worstWithin(one, stretch) ?? []),
  }));
  const known = Math.min(...read.map(({ knownUntil }) => knownUntil));
  const unknownAfter = known >= to ? null : epochMs(Math.max(from, known));
  const told = { from, to: unknownAfter ?? to };
  const silent = merge(read.flatMap(({ unknown }) => unknown.flatMap((one) => clip(one, told))));
  return { closed, unknown: subtract(silent, closed), unknownAfter };
}
