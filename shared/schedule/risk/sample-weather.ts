import { mergeIntervals, subtractIntervals } from '../intervals.js';
import type { Interval, WeatherHold, WeatherSet } from '../model.js';
import { slot } from '../slot.js';
import type { Draws } from './draws.js';
import type { DayChances, WeatherRisk } from './risk-model.js';

/** Why a drawn day is lost. */
const DRAWN = {
  kind: 'limit',
  limitId: 'drawn',
  value: 0,
  hour: slot(0),
  text: 'a day like those that are lost in such a month',
} as const;

/**
 * One course the weather may take: holds of the forecast where it is believed, drawn days where it is not or has ended. Nothing is
 * unknown in a sample; that is what samples are for.
 */
export function sampleWeather(
  sets: readonly WeatherSet[],
  weather: WeatherRisk,
  horizon: number,
  draws: Draws,
): WeatherSet[] {
  const { lost, believed } = lostStretches(weather, horizon, draws);
  const holds = lost.map((stretch): WeatherHold => ({ ...stretch, cause: DRAWN }));
  return sets.map(({ id, holds: forecast }) => {
    const kept = forecast.flatMap((hold): WeatherHold[] => {
      if (hold.cause.kind === 'unknown') return [];
      if (hold.cause.kind === 'called') return [hold];
      const outside = subtractIntervals([hold], believed);
      return subtractIntervals([hold], outside).map((part) => ({ ...part, cause: hold.cause }));
    });
    return { id, holds: [...kept, ...holds] };
  });
}

interface Course {
  /** Stretches in which nothing weather-bound goes on. */
  readonly lost: Interval[];
  /** Where the forecast stands. */
  readonly believed: Interval[];
}

function lostStretches(weather: WeatherRisk, horizon: number, draws: Draws): Course {
  const { forecastUntil, firstDay, day, errorPerDay, beyond } = weather;
  const believed: Interval[] = [];
  const open: Interval[] = [];
  const lost: Interval[] = [];
  const year =
    beyond.kind === 'years' ? beyond.years[Math.floor(draws.uniform('year') * beyond.years.length)]! : [];
  let before: 'good' | 'lost' | undefined;
  for (let d = firstDay > 0 ? -1 : 0; firstDay + d * day < horizon; d++) {
    const from = slot(Math.max(0, firstDay + d * day));
    const to = slot(Math.min(horizon, firstDay + (d + 1) * day));
    const trusted =
      to <= forecastUntil && draws.uniform(`trust ${d}`) >= Math.min(1, errorPerDay * Math.max(0, d));
    if (trusted) {
      believed.push({ from, to });
      before = undefined;
      continue;
    }
    open.push({ from, to });
    if (beyond.kind === 'years') continue;
    const chances = beyond.months[beyond.monthOfDay[Math.max(0, d)] ?? beyond.monthOfDay.at(-1)!]!;
    before = draws.uniform(`day ${d}`) < chanceOfLoss(chances, before) ? 'lost' : 'good';
    if (before === 'lost') lost.push({ from, to });
  }
  if (beyond.kind === 'years') {
    const closed = mergeIntervals([...year]);
    return {
      lost: subtractIntervals(closed, subtractIntervals(closed, mergeIntervals(open))),
      believed: mergeIntervals(believed),
    };
  }
  return { lost: mergeIntervals(lost), believed: mergeIntervals(believed) };
}

/** Chance of a lost day; without a day before it, the share of such days in the long run. */
export function chanceOfLoss(chances: DayChances, before: 'good' | 'lost' | undefined): number {
  const { lostAfterGood, lostAfterLost } = chances;
  if (before === 'lost') return lostAfterLost;
  if (before === 'good') return lostAfterGood;
  const leaving = 1 - lostAfterLost + lostAfterGood;
  return leaving === 0 ? 1 : lostAfterGood / leaving;
}
