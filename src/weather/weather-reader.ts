import { Injectable } from '@nestjs/common';
import type { Forecast, WeatherHold } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { isRowId } from '../platform/row-id.js';
import { type LimitSetInForce, limitSetsInForce } from './limit-sets.js';
import { newestForecastIds } from './newest-forecasts.js';
import { standingHold } from './standing-hold.js';

/** Reads forecasts, limits and holds; everything by id or site is batched within the request. */
@Injectable()
export class WeatherReader {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** The newest forecast of a site; null when there is none. */
  forecastOf(ctx: Context, siteId: string): Promise<Forecast | null> {
    return batchedOne<Forecast>(ctx, 'newest forecast', async (siteIds) => {
      const ids = await newestForecastIds(this.database, ctx.companyId, siteIds);
      const rows = await this.database.forecast.findMany({ where: { id: { in: ids } } });
      return rows.map((row) => [row.siteId, row] as const);
    }).load(siteId);
  }

  /** The holds of a site in order of time: those that stand or are to come, or all of them. */
  holdsOf(ctx: Context, siteId: string, activeOnly: boolean): Promise<WeatherHold[]> {
    const name = activeOnly ? 'standing weather holds' : 'weather holds';
    return batchedMany<WeatherHold>(ctx, name, async (siteIds) => {
      const rows = await this.database.weatherHold.findMany({
        where: {
          companyId: ctx.companyId,
          siteId: { in: [...siteIds] },
          ...(activeOnly ? standingHold(this.clock.now()) : {}),
        },
        orderBy: [{ startsAt: 'asc' }, { id: 'asc' }],
      });
      return rows.map((row) => [row.siteId, row] as const);
    }).load(siteId);
  }

  /** One hold of the company; null when there is none. */
  async holdById(ctx: Context, id: string | null): Promise<WeatherHold | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<WeatherHold>(ctx, 'weather hold', async (ids) => {
      const rows = await this.database.weatherHold.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** Those of the holds that exist, in the order asked for. */
  async holdsById(ctx: Context, ids: readonly string[]): Promise<WeatherHold[]> {
    const found = await Promise.all(ids.map((id) => this.holdById(ctx, id)));
    return found.filter((hold) => hold !== null);
  }

  /** The limits in force, the company's own before the defaults; read once a request. */
  async limitSets(ctx: Context): Promise<LimitSetInForce[]> {
    const sets = await batchedOne<LimitSetInForce[]>(ctx, 'weather limits in force', async ([companyId]) => {
      const rows = await this.database.weatherLimitSet.findMany({ where: { companyId: ctx.companyId } });
      return [[companyId ?? '', limitSetsInForce(rows)]];
    }).load(ctx.companyId);
    return sets ?? [];
  }
}
