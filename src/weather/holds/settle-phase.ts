import type { Prisma } from '../../generated/prisma/client.js';
import { epochMs, HOUR_MS } from '../../../shared/units/time.js';
import type { Forecast } from '../../../shared/weather/forecast.js';
import { type HoldMove, settleHolds } from '../../../shared/weather/settle-holds.js';
import { type WeatherWindows, weatherWindows } from '../../../shared/weather/weather-windows.js';
import type { LimitSetInForce } from '../limit-sets.js';
import { protectionOf } from '../protection.js';
import { plannedWork } from './planned-work.js';
import { AHEAD_MS, isLive, type WatchedPhase } from './watched-sites.js';

/** The longest that a limit may look back on: so far past its end a forecast may still close. */
const PAST_END = 96 * HOUR_MS;

const NONE: WeatherWindows = { closed: [], unknown: [], unknownAfter: null };

/** What a phase's holds of the forecast must become. */
export function settlePhase(
  phase: WatchedPhase,
  set: LimitSetInForce | undefined,
  forecast: Forecast,
  now: Date,
): readonly HoldMove[] {
  const ranges = phase.weatherHolds.flatMap(({ id, startsAt, endsAt, liftedAt }) =>
    endsAt ? [{ id, lifted: liftedAt !== null, from: ms(startsAt), to: ms(endsAt) }] : [],
  );
  return settleHolds({
    now: ms(now),
    aheadMs: AHEAD_MS,
    windows: isLive(phase) ? wholeWindows(set, forecast, protectionOf(phase.holds)) : NONE,
    work: plannedWork(phase),
    standing: ranges.filter(({ lifted }) => !lifted),
    answered: ranges.filter(({ lifted }) => lifted),
  });
}

/** Over the whole forecast, so that a stretch and its worst hour stay the same while time passes. */
function wholeWindows(
  set: LimitSetInForce | undefined,
  forecast: Forecast,
  protection: readonly string[],
): WeatherWindows {
  const first = forecast.hours[0];
  const last = forecast.hours.at(-1);
  if (!set || !first || !last) return NONE;
  const end = epochMs(last.at + HOUR_MS + PAST_END);
  return weatherWindows(set.limits, forecast, first.at, end, { protection });
}

const ms = (at: Date) => epochMs(at.getTime());

/** What a hold rests on, as it is kept with it. */
export function basisOf(phase: WatchedPhase, set: LimitSetInForce | undefined, forecastId: string) {
  return {
    forecastId,
    limitKey: phase.weatherLimitKey,
    limitRevision: set?.revision ?? null,
    protection: protectionOf(phase.holds),
  } satisfies Prisma.InputJsonObject;
}
