import { Injectable } from '@nestjs/common';
import type { Authority, Site } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedOne } from '../platform/graphql/batched.js';
import { type Connection, type PageArgs, pageOf } from '../platform/graphql/page.js';
import { rowAfter } from '../platform/graphql/row-after.js';
import { isRowId } from '../platform/row-id.js';

/** Reads sites and authorities; single ones are batched within the request. */
@Injectable()
export class SiteReader {
  constructor(private readonly database: Database) {}

  /** A page of the sites in the order they were entered. */
  page(ctx: Context, args: PageArgs): Promise<Connection<Site>> {
    return pageOf(args, ({ take, after }) =>
      this.database.site.findMany({
        where: { companyId: ctx.companyId, ...rowAfter(after) },
        orderBy: { id: 'asc' },
        take,
      }),
    );
  }

  /** One site of the company; null when there is none. */
  async byId(ctx: Context, id: string): Promise<Site | null> {
    if (!isRowId(id)) return null;
    return batchedOne<Site>(ctx, 'site', async (ids) => {
      const rows = await this.database.site.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The authorities of the company by name. */
  authorities(ctx: Context): Promise<Authority[]> {
    return this.database.authority.findMany({
      where: { companyId: ctx.companyId },
      orderBy: { name: 'asc' },
    });
  }

  /** One authority of the company; null when there is none. */
  async authorityById(ctx: Context, id: string | null): Promise<Authority | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<Authority>(ctx, 'authority', async (ids) => {
      const rows = await this.database.authority.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }
}
