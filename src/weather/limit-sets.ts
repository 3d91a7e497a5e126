import { checkLimits } from '../../shared/weather/check-limits.js';
import { DEFAULT_LIMIT_SETS } from '../../shared/weather/default-limit-sets.js';
import type { WeatherLimit, WeatherLimitSet } from '../../shared/weather/weather-limit.js';
import type { Prisma, WeatherLimitSet as LimitSetRow } from '../generated/prisma/client.js';

/** A set of limits in force: a row of the company, or the default it has not touched. */
export interface LimitSetInForce extends WeatherLimitSet {
  /** Id of the row; the key for a default. */
  readonly id: string;
  /** 0 for a default. */
  readonly revision: number;
}

/** The limits in force by key: the company's own, and the default for every key it has none for. In order of name. */
export function limitSetsInForce(rows: readonly LimitSetRow[]): LimitSetInForce[] {
  const own = rows.map(({ id, key, name, limits, requirements, revision }) => ({
    id,
    key,
    name,
    limits: stored(key, limits),
    requirements: requirements === null ? defaultOf(key) : stored(key, requirements),
    revision,
  }));
  const taken = new Set(own.map(({ key }) => key));
  const defaults = DEFAULT_LIMIT_SETS.filter(({ key }) => !taken.has(key)).map((set) => ({
    ...set,
    id: set.key,
    revision: 0,
  }));
  return [...own, ...defaults].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}

const defaultOf = (key: string): readonly WeatherLimit[] =>
  DEFAULT_LIMIT_SETS.find((set) => set.key === key)?.requirements ?? [];

/** @throws Error when the row holds limits that were never checked: nothing is kept without. */
function stored(key: string, value: Prisma.JsonValue): readonly WeatherLimit[] {
  const check = checkLimits(value);
  if (check.ok) return check.limits;
  const faults = check.faults.map(({ path, message }) => `${path}: ${message}`).join('; ');
  throw new Error(`The weather limits "${key}" cannot be read: ${faults}`);
}
