import { epochMs, HOUR_MS, type EpochMs } from '../units/time.js';
import { DAY_HOURS } from './daily-means.js';
import { beginOf, type HourGrid } from './hour-grid.js';
import { judge } from './judge.js';
import { clip, merge, type Stretch } from './stretch.js';
import { weatherCause, worseOf, type WeatherCause } from './weather-cause.js';
import type { WeatherLimit } from './weather-limit.js';

/** Time that one broken hour takes from the work, and why. */
export interface BrokenHour {
  readonly stretch: Stretch;
  readonly cause: WeatherCause;
}

/** What one limit makes of a forecast. */
export interface LimitHours {
  readonly limit: WeatherLimit;
  readonly broken: readonly BrokenHour[];
  /** Time of which the forecast says too little, up to its end. */
  readonly unknown: readonly Stretch[];
  /** Up to here the forecast can tell. */
  readonly knownUntil: EpochMs;
}

/** Reads the hours of a forecast by a limit: hours it looks ahead to and back on count for those that look at them. */
export function limitHours(
  limit: WeatherLimit,
  grid: HourGrid,
  asked: Stretch,
  cautious = false,
): LimitHours {
  const { broken, values } = judge(limit, grid, cautious);
  const seen = (from: number, to: number): Stretch[] =>
    clip(
      {
        from: epochMs(beginOf(grid, from) - limit.aheadHours * HOUR_MS),
        to: epochMs(beginOf(grid, to) + limit.backHours * HOUR_MS),
      },
      asked,
    );
  const hours: BrokenHour[] = [];
  // The record begins with the first hour: what looks further back cannot tell.
  const unknown = clip({ from: asked.from, to: epochMs(grid.start + limit.backHours * HOUR_MS) }, asked);
  let last: WeatherCause | null = null;
  broken.forEach((state, i) => {
    if (state === 'unknown') unknown.push(...seen(i, i + 1));
    if (state !== true) return;
    const value = values[i]!;
    // An hour that stays closed without a value is closed for the hour before it.
    if (value !== null) last = weatherCause(limit, beginOf(grid, i), value);
    const cause = last;
    if (cause) hours.push(...seen(i, i + 1).map((stretch) => ({ stretch, cause })));
  });
  const ahead = limit.aheadHours + (limit.dailyMean === 'after' ? DAY_HOURS - 1 : 0);
  return {
    limit,
    broken: hours,
    unknown: merge(unknown),
    knownUntil: beginOf(grid, grid.hours.length - ahead),
  };
}

/** The worst cause among the broken hours inside a stretch; null when there is none. */
export function worstWithin({ limit, broken }: LimitHours, { from, to }: Stretch): WeatherCause | null {
  let worst: WeatherCause | null = null;
  for (const { stretch, cause } of broken) {
    if (stretch.from < from || stretch.to > to) continue;
    worst = worst ? worseOf(limit, worst, cause) : cause;
  }
  return worst;
}
