import type { Forecast as ForecastRow, ForecastFeed } from '../../generated/prisma/client.js';
import { epochMs, HOUR_MS } from '../../../shared/units/time.js';
import type { Forecast } from '../../../shared/weather/forecast.js';
import { sameHours } from '../../../shared/weather/sources/same-hours.js';
import type { Change } from '../../platform/change/change.js';
import { FetchFailure } from '../../platform/http/fetch-failure.js';
import { isFromFuture } from '../from-future.js';
import { keepForecast } from '../keep-forecast.js';
import { newestForecastIds } from '../newest-forecasts.js';
import { ownHours } from '../stored-forecast.js';
import type { ForecastSource, SourceAnswer } from './forecast-source.js';

type Fetched = SourceAnswer & { readonly kind: 'forecast' };

/**
 * Uses a fetched forecast of a site, inside a change. One that says nothing new of the hours to come changes nothing,
 * beyond the time of issue that its source tells. The first from another source or of another place sets those before
 * it aside, also when they were issued later.
 *
 * @returns id of the forecast in use.
 * @throws FetchFailure when it cannot be used: from the future, older than the one in use, or knowing nothing to come.
 */
export async function takeFetched(
  change: Change,
  feed: Pick<ForecastFeed, 'siteId' | 'forecastId'>,
  source: ForecastSource,
  { forecast, notes }: Fetched,
): Promise<string> {
  const { tx, now } = change;
  const { siteId } = feed;
  const current = feed.forecastId === null ? null : await inUse(change, siteId);
  demandUsable(forecast, current, now);
  if (current && saysNothingNew(forecast, current, now)) {
    if (source.saysWhenIssued)
      await tx.forecast.update({
        where: { id: current.id },
        data: { issuedAt: new Date(forecast.issuedAt) },
      });
    return current.id;
  }
  if (feed.forecastId === null)
    await tx.forecast.updateMany({ where: { siteId, setAsideAt: null }, data: { setAsideAt: now } });
  return (await keepForecast(change, siteId, source.title, { forecast, notes })).id;
}

async function inUse({ tx, ctx }: Change, siteId: string): Promise<ForecastRow | null> {
  const [id] = await newestForecastIds(tx, ctx.companyId, [siteId]);
  return id === undefined ? null : tx.forecast.findUnique({ where: { id } });
}

function demandUsable(forecast: Forecast, current: ForecastRow | null, now: Date): void {
  const issued = new Date(forecast.issuedAt).toISOString();
  if (isFromFuture(forecast.issuedAt, now))
    throw new FetchFailure(
      `The forecast says it was issued ${issued}, which lies in the future; it is not used.`,
    );
  if (current && forecast.issuedAt < current.issuedAt.getTime())
    throw new FetchFailure(
      `The forecast was issued ${issued}, before the one in use (${current.source}, issued ${current.issuedAt.toISOString()}); it is not used.`,
    );
  if (!forecast.hours.some(({ at, temperature }) => at > now.getTime() && temperature !== null))
    throw new FetchFailure(
      `The forecast issued ${issued} knows no temperature of the hours to come; it is not used.`,
    );
}

function saysNothingNew(forecast: Forecast, current: ForecastRow, now: Date): boolean {
  const stored = { issuedAt: epochMs(current.issuedAt.getTime()), hours: ownHours(current) };
  return sameHours(forecast, stored, epochMs(now.getTime() - HOUR_MS + 1));
}
