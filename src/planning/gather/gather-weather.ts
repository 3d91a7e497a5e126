import { mergeIntervals, subtractIntervals } from '../../../shared/schedule/intervals.js';
import type { Interval, WeatherHold, WeatherSet } from '../../../shared/schedule/model.js';
import { epochMs, HOUR_MS } from '../../../shared/units/time.js';
import type { WeatherLimit } from '../../../shared/weather/weather-limit.js';
import { weatherWindows } from '../../../shared/weather/weather-windows.js';
import type { Forecast, Phase, WeatherHold as HoldRow } from '../../generated/prisma/client.js';
import { coreForecast, limitSetsInForce, protectionOf } from '../../weather/weather.face.js';
import type { PlanningRows } from './rows.js';
import type { TimeFrame } from './time-frame.js';

/** A hold without an end closes so long from now at least; what comes after it is unknown. */
const OPEN_END_MS = 24 * HOUR_MS;

/** The weather of a plan: the sets, and which of them close which phase. */
export interface GatheredWeather {
  readonly sets: readonly WeatherSet[];
  readonly idsOf: (phase: Phase) => readonly string[];
}

/**
 * One set for each site and kind of work under the same protection, from the newest forecast; and one for each site or phase that
 * people hold. Without a forecast, and past it, the weather is unknown.
 */
export function gatherWeather(rows: PlanningRows, frame: TimeFrame): GatheredWeather {
  const sets = new Map<string, WeatherSet>();
  const forecasts = new Map(rows.forecasts.map((row) => [row.siteId, row]));
  const limits = new Map(limitSetsInForce(rows.limitSets).map((set) => [set.key, set.limits]));
  const sites = new Map(rows.jobs.map((job) => [job.id, job.site.id]));
  const protection = protectionByPhase(rows);
  const called = calledSets(rows, frame);
  const answered = answeredStretches(rows, frame);
  for (const set of called.values()) sets.set(set.id, set);
  const ids = new Map<string, string[]>();
  for (const phase of rows.phases) {
    if (phase.state === 'done') continue;
    const siteId = sites.get(phase.jobId) ?? '';
    const own: string[] = [];
    const kind = phase.weatherLimitKey === null ? undefined : limits.get(phase.weatherLimitKey);
    if (kind && kind.length > 0) {
      const under = protection.get(phase.id) ?? [];
      const free = answered.get(phase.id) ?? [];
      const id = JSON.stringify([siteId, phase.weatherLimitKey, under, free]);
      if (!sets.has(id)) {
        const holds = forecastHolds(kind, forecasts.get(siteId), under, frame);
        sets.set(id, { id, holds: holds.flatMap((hold) => without(hold, free)) });
      }
      own.push(id);
    }
    const held = [...(phase.durationKind === 'work' ? [siteId] : []), phase.id];
    ids.set(phase.id, [...own, ...held.flatMap((key) => called.get(key)?.id ?? [])]);
  }
  return { sets: [...sets.values()], idsOf: ({ id }) => ids.get(id) ?? [] };
}

function protectionByPhase({ holds, pools }: PlanningRows): Map<string, string[]> {
  const kinds = new Map(pools.map((pool) => [pool.id, pool]));
  const taken = new Map<string, { pool: { kind: string } }[]>();
  for (const { fromPhaseId, poolId } of holds) {
    const pool = kinds.get(poolId);
    if (pool) taken.set(fromPhaseId, [...(taken.get(fromPhaseId) ?? []), { pool }]);
  }
  return new Map([...taken].map(([id, list]) => [id, protectionOf(list)]));
}

function forecastHolds(
  limits: readonly WeatherLimit[],
  forecast: Forecast | undefined,
  protection: readonly string[],
  frame: TimeFrame,
): WeatherHold[] {
  const from = epochMs(frame.ms(frame.now));
  const to = epochMs(frame.endMs);
  const unknown = (start: number, end: number): WeatherHold => ({
    from: frame.before(start),
    to: frame.at(end),
    cause: { kind: 'unknown' },
  });
  const core = forecast ? coreForecast(forecast) : { issuedAt: from, hours: [] };
  const windows = weatherWindows(limits, core, from, to, { protection });
  const closed = windows.closed.flatMap(({ from: start, to: end, causes }): WeatherHold[] => {
    const [first] = causes;
    if (!first) return [];
    const text = causes.map((cause) => cause.text).join('; ');
    const { limitId, value } = first;
    const hour = frame.before(first.hour);
    return [
      { from: frame.before(start), to: frame.at(end), cause: { kind: 'limit', limitId, value, hour, text } },
    ];
  });
  const beyond = windows.unknownAfter === null ? [] : [unknown(windows.unknownAfter, to)];
  return [...closed, ...windows.unknown.map(({ from: start, to: end }) => unknown(start, end)), ...beyond];
}

/** Stretches in which a person has lifted the forecast's hold of a phase and so answers for it, by phase id. */
function answeredStretches(rows: PlanningRows, frame: TimeFrame): Map<string, Interval[]> {
  const stretches = new Map<string, Interval[]>();
  for (const { cause, phaseId, startsAt, endsAt } of rows.weatherHolds) {
    if (cause !== 'forecast' || phaseId === null || endsAt === null) continue;
    const stretch = { from: frame.before(startsAt), to: frame.at(endsAt) };
    stretches.set(phaseId, [...(stretches.get(phaseId) ?? []), stretch]);
  }
  return stretches;
}

/** A hold less some stretches; what is unknown stays unknown. */
function without(hold: WeatherHold, free: readonly Interval[]): WeatherHold[] {
  if (free.length === 0 || hold.cause.kind === 'unknown') return [hold];
  return subtractIntervals([hold], mergeIntervals(free)).map(({ from, to }) => ({
    from,
    to,
    cause: hold.cause,
  }));
}

/** Sets of called holds, by the site or phase they hold. */
function calledSets(rows: PlanningRows, frame: TimeFrame): Map<string, WeatherSet> {
  const holds = new Map<string, WeatherHold[]>();
  for (const row of rows.weatherHolds) {
    if (row.cause === 'forecast') continue;
    const key = row.phaseId ?? row.siteId;
    holds.set(key, [...(holds.get(key) ?? []), ...calledHolds(row, frame)]);
  }
  return new Map([...holds].map(([key, list]) => [key, { id: `called ${key}`, holds: list }]));
}

function calledHolds(row: HoldRow, frame: TimeFrame): WeatherHold[] {
  const from = frame.before(row.startsAt);
  const cause = { kind: 'called', holdId: row.id, text: row.reason } as const;
  const end = row.liftedAt && (!row.endsAt || row.liftedAt < row.endsAt) ? row.liftedAt : row.endsAt;
  if (end) {
    const to = frame.at(end);
    return to > from ? [{ from, to, cause }] : [];
  }
  const least = frame.at(Math.max(frame.nowMs, row.startsAt.getTime()) + OPEN_END_MS);
  return [
    { from, to: least, cause },
    { from: least, to: frame.at(frame.endMs), cause: { kind: 'unknown' } },
  ];
}
