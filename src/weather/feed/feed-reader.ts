import { Injectable } from '@nestjs/common';
import type { ForecastFeed } from '../../generated/prisma/client.js';
import type { Context } from '../../platform/context.js';
import { Database } from '../../platform/database/database.js';
import { batchedOne } from '../../platform/graphql/batched.js';

/** Reads how the fetching of forecasts stands; batched within the request. */
@Injectable()
export class FeedReader {
  constructor(private readonly database: Database) {}

  /** The feed of a site; null when it never had a source that is fetched. */
  feedOf(ctx: Context, siteId: string): Promise<ForecastFeed | null> {
    return batchedOne<ForecastFeed>(ctx, 'forecast feed', async (siteIds) => {
      const rows = await this.database.forecastFeed.findMany({
        where: { companyId: ctx.companyId, siteId: { in: [...siteIds] } },
      });
      return rows.map((row) => [row.siteId, row] as const);
    }).load(siteId);
  }
}
