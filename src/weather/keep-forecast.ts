import type { Forecast as ForecastRow, Prisma } from '../generated/prisma/client.js';
import { earlierHours } from '../../shared/weather/earlier-hours.js';
import type { ForecastFault } from '../../shared/weather/forecast-fault.js';
import type { Forecast } from '../../shared/weather/forecast.js';
import type { Change } from '../platform/change/change.js';
import { newestForecastIds } from './newest-forecasts.js';
import { coreForecast } from './stored-forecast.js';

/** Notes of a forecast that its line in the journal tells; the rest is counted. */
const NOTES_TOLD = 5;

/** Keeps a forecast of a site, wherever it comes from, and tells the journal; holds and plan follow the change. */
export async function keepForecast(
  change: Change,
  siteId: string,
  source: string,
  { forecast, notes }: { readonly forecast: Forecast; readonly notes: readonly ForecastFault[] },
): Promise<ForecastRow> {
  const row = await change.tx.forecast.create({
    data: {
      companyId: change.ctx.companyId,
      siteId,
      source,
      issuedAt: new Date(forecast.issuedAt),
      receivedAt: change.now,
      hours: forecast.hours as unknown as Prisma.InputJsonArray,
      earlierHours: await hoursBefore(change, siteId, forecast),
    },
  });
  change.record({
    action: 'forecast received',
    subjectType: 'site',
    subjectId: siteId,
    detail: {
      forecastId: row.id,
      source,
      issuedAt: row.issuedAt.toISOString(),
      hours: forecast.hours.length,
      ...(notes.length > 0
        ? { notes: notes.length, firstNotes: notes.slice(0, NOTES_TOLD).map(({ message }) => message) }
        : {}),
    },
  });
  return row;
}

/** What the forecast in use until now says of the hours before the new one's first. */
async function hoursBefore(
  { ctx, tx }: Change,
  siteId: string,
  { hours: [first] }: Forecast,
): Promise<Prisma.InputJsonArray> {
  const before = await tx.forecast.findMany({
    where: { companyId: ctx.companyId, id: { in: await newestForecastIds(tx, ctx.companyId, [siteId]) } },
  });
  const known = before.flatMap((row) => coreForecast(row).hours);
  return (first ? earlierHours(known, first.at) : []) as unknown as Prisma.InputJsonArray;
}
