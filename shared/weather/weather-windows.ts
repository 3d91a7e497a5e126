import { epochMs, HOUR_MS, type EpochMs } from '../units/time.js';
import { exceeds } from './exceeds.js';
import type { Forecast } from './forecast.js';
import { clip, merge, subtract, type Stretch } from './stretch.js';
import { weatherCause, worseOf, type WeatherCause } from './weather-cause.js';
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

/**
 * Windows for work under `limits` from `from` up to `to`. A limit that looks ahead closes the hours before the bad
 * one as well, and cannot tell about the last hours of a forecast.
 */
export function weatherWindows(
  limits: readonly WeatherLimit[],
  forecast: Forecast,
  from: EpochMs,
  to: EpochMs,
  { protection = [] }: WeatherOptions = {},
): WeatherWindows {
  const standing = limits.filter((limit) => !limit.liftedBy.some((kind) => protection.includes(kind)));
  if (standing.length === 0 || to <= from) return { closed: [], unknown: [], unknownAfter: null };
  const asked = { from, to };
  const bad = standing.flatMap((limit) => badHours(limit, forecast, asked));
  const closed = merge(bad.map(({ stretch }) => stretch)).map((stretch) => ({
    ...stretch,
    causes: causesWithin(stretch, bad, standing),
  }));
  const end = endOf(forecast, from);
  const known = Math.min(...standing.map((limit) => end - limit.aheadHours * HOUR_MS));
  const unknownAfter = known >= to ? null : epochMs(Math.max(from, known));
  const silent = standing.flatMap((limit) => silentHours(limit, forecast, asked));
  const told = { from, to: unknownAfter ?? to };
  return { closed, unknown: subtract(merge(silent.flatMap((one) => clip(one, told))), closed), unknownAfter };
}

interface BadHour {
  readonly limit: WeatherLimit;
  readonly stretch: Stretch;
  readonly cause: WeatherCause;
}

/** The end of the last hour the forecast has. */
function endOf({ hours }: Forecast, from: EpochMs): number {
  const last = hours.at(-1);
  return last ? last.at + HOUR_MS : from;
}

/** The hour and those before it that look at it. */
const seenFrom = (limit: WeatherLimit, start: number, end: number): Stretch => ({
  from: epochMs(start - limit.aheadHours * HOUR_MS),
  to: epochMs(end),
});

const badHours = (limit: WeatherLimit, { hours }: Forecast, asked: Stretch): BadHour[] =>
  hours.flatMap((hour) => {
    const value = hour[limit.measure];
    if (value === null || exceeds(limit, hour) !== true) return [];
    const stretches = clip(seenFrom(limit, hour.at, hour.at + HOUR_MS), asked);
    return stretches.map((stretch) => ({ limit, stretch, cause: weatherCause(limit, hour, value) }));
  });

const causesWithin = (
  stretch: Stretch,
  bad: readonly BadHour[],
  limits: readonly WeatherLimit[],
): WeatherCause[] =>
  limits.flatMap((limit) => {
    const [first, ...others] = bad
      .filter(
        (hour) => hour.limit === limit && hour.stretch.from >= stretch.from && hour.stretch.to <= stretch.to,
      )
      .map((hour) => hour.cause);
    return first ? [others.reduce((worst, cause) => worseOf(limit, worst, cause), first)] : [];
  });

/** Hours that a limit needs and the forecast leaves out or leaves empty. */
function silentHours(limit: WeatherLimit, { hours }: Forecast, asked: Stretch): Stretch[] {
  const silent: Stretch[] = [];
  let reached: number = asked.from;
  for (const hour of hours) {
    if (hour.at > reached) silent.push(seenFrom(limit, reached, hour.at));
    if (exceeds(limit, hour) === 'unknown') silent.push(seenFrom(limit, hour.at, hour.at + HOUR_MS));
    reached = Math.max(reached, hour.at + HOUR_MS);
  }
  return silent;
}
