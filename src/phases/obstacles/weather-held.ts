import { epochMs } from '../../../shared/units/time.js';
import { weatherWindows } from '../../../shared/weather/weather-windows.js';
import type { WeatherHold } from '../../generated/prisma/client.js';
import { WeatherHeld } from '../errors/weather-held.js';
import { localTime } from '../../platform/local-time.js';
import type { PhaseFacts } from '../facts/phase-facts.js';
import { type FoundObstacle, idsOf, messagesOf, type ObstacleCheck } from './obstacle.js';

/** Shortest stretch the forecast is asked about. */
const LOOK_MS = 15 * 60_000;

/** No work starts under a weather hold, nor while the forecast is known to break a limit of the phase. */
export const weatherHeld: ObstacleCheck = {
  find: (facts, { gate, at }) => {
    if (gate !== 'start' || facts.phase.durationKind === 'elapsed') return [];
    const covering = facts.weatherHolds.filter((hold) => covers(hold, at));
    const standing = covering.filter(({ liftedAt }) => liftedAt === null);
    if (standing.length > 0) return standing.map((hold) => heldBy(hold, facts.zone));
    // A person who lifted the forecast's hold answers for the protection in place.
    return covering.length > 0 ? [] : brokenLimits(facts, at);
  },
  refuse: (found) => new WeatherHeld(idsOf(found, 'weatherHoldId'), messagesOf(found)),
};

function covers({ startsAt, endsAt }: WeatherHold, at: Date): boolean {
  return startsAt <= at && (endsAt === null || endsAt > at);
}

function heldBy({ id, reason, endsAt, cause }: WeatherHold, zone: string): FoundObstacle {
  const until = endsAt ? ` until ${localTime(endsAt, zone)}` : '';
  return {
    code: 'WeatherHeld',
    message: `Held for the weather${until}: ${reason}. Wait, or lift the hold with a reason.`,
    liftedBy: cause === 'called' ? 'foreman' : 'office',
    weatherHoldId: id,
  };
}

function brokenLimits({ weather }: PhaseFacts, at: Date): FoundObstacle[] {
  if (!weather) return [];
  const from = epochMs(at.getTime());
  const { closed } = weatherWindows(weather.limits, weather.forecast, from, epochMs(from + LOOK_MS), {
    protection: weather.protection,
  });
  const causes = closed.filter((stretch) => stretch.from <= from).flatMap((stretch) => stretch.causes);
  return causes.map(({ text }) => ({
    code: 'WeatherHeld',
    message: `The forecast breaks a limit now: ${text}. Wait for a window, or upload a newer forecast.`,
    liftedBy: null,
  }));
}
