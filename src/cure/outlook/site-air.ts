import type { ForecastHour } from '../../../shared/weather/forecast.js';
import { type Fahrenheit, fahrenheit } from '../../../shared/units/temperature.js';
import type { Transaction } from '../../platform/database/database.js';

/** How far ahead the forecast's temperatures are averaged for what comes after it. */
const AHEAD_MS = 72 * 60 * 60 * 1000;

/** Air that is assumed where no forecast tells: the border of cold weather. Common practice. */
const NOTHING_KNOWN = fahrenheit(40);

/** The air of a site: what is forecast, and what is assumed where nothing is. */
export interface SiteAir {
  readonly hours: readonly ForecastHour[];
  readonly assumed: Fahrenheit;
  /** Id of the forecast; null without one. */
  readonly forecastId: string | null;
}

const UNKNOWN: SiteAir = { hours: [], assumed: NOTHING_KNOWN, forecastId: null };

/**
 * The air at sites by their newest forecasts. Where none tells, the mean of its next three days is assumed, and 40 °F
 * without one; the answers name it and mark what rests on it.
 */
export async function siteAir(
  tx: Transaction,
  companyId: string,
  siteIds: readonly string[],
  now: Date,
): Promise<(siteId: string) => SiteAir> {
  const forecasts = await tx.forecast.findMany({
    where: { companyId, siteId: { in: [...siteIds] }, setAsideAt: null },
    distinct: ['siteId'],
    orderBy: [{ siteId: 'asc' }, { issuedAt: 'desc' }, { id: 'desc' }],
  });
  const airs = new Map(
    forecasts.map(({ id, siteId, earlierHours, hours }) => {
      const known = [earlierHours, hours].flatMap((stored) => stored as unknown as ForecastHour[]);
      return [siteId, { hours: known, assumed: meanAhead(known, now.getTime()), forecastId: id }] as const;
    }),
  );
  return (siteId) => airs.get(siteId) ?? UNKNOWN;
}

function meanAhead(hours: readonly ForecastHour[], from: number): Fahrenheit {
  const known = hours
    .filter(({ at }) => at >= from && at < from + AHEAD_MS)
    .flatMap(({ temperature }) => temperature ?? []);
  const sum = known.reduce<number>((total, value) => total + value, 0);
  return known.length > 0 ? fahrenheit(Math.round((sum / known.length) * 10) / 10) : NOTHING_KNOWN;
}
