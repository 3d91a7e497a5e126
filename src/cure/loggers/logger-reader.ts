import { Injectable } from '@nestjs/common';
import type { Logger } from '../../generated/prisma/client.js';
import type { Context } from '../../platform/context.js';
import { Database } from '../../platform/database/database.js';
import { batchedMany, batchedOne } from '../../platform/graphql/batched.js';
import { isRowId } from '../../platform/row-id.js';

/** Reads loggers; everything is batched within the request. */
@Injectable()
export class LoggerReader {
  constructor(private readonly database: Database) {}

  /** One logger of the company; null when there is none. */
  async byId(ctx: Context, id: string | null): Promise<Logger | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<Logger>(ctx, 'logger', async (ids) => {
      const rows = await this.database.logger.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The loggers of a site in the order they were registered, revoked ones included. */
  ofSite(ctx: Context, siteId: string): Promise<Logger[]> {
    return batchedMany<Logger>(ctx, 'loggers of site', async (ids) => {
      const rows = await this.database.logger.findMany({
        where: { companyId: ctx.companyId, siteId: { in: [...ids] } },
        orderBy: { id: 'asc' },
      });
      return rows.map((row) => [row.siteId, row] as const);
    }).load(siteId);
  }
}
