import { Injectable } from '@nestjs/common';
import type { Improvement, Proposal } from '../../generated/prisma/client.js';
import type { Context } from '../../platform/context.js';
import { Database } from '../../platform/database/database.js';
import { batchedOne } from '../../platform/graphql/batched.js';
import { type Connection, type PageArgs, pageOf } from '../../platform/graphql/page.js';
import { rowAfter } from '../../platform/graphql/row-after.js';
import { isRowId } from '../../platform/row-id.js';

/** Reads searches for better plans. */
@Injectable()
export class ImprovementReader {
  constructor(private readonly database: Database) {}

  /** A page of the searches in the order they were asked for. */
  page(ctx: Context, args: PageArgs): Promise<Connection<Improvement>> {
    return pageOf(args, ({ take, after }) =>
      this.database.improvement.findMany({
        where: { companyId: ctx.companyId, ...rowAfter(after) },
        orderBy: { id: 'asc' },
        take,
      }),
    );
  }

  /** The search asked for last; null when there never was one. */
  newest(ctx: Context): Promise<Improvement | null> {
    return this.database.improvement.findFirst({
      where: { companyId: ctx.companyId },
      orderBy: [{ askedAt: 'desc' }, { id: 'desc' }],
    });
  }

  /** One search of the company; null when there is none. */
  byId(ctx: Context, id: string | null): Promise<Improvement | null> {
    if (id === null || !isRowId(id)) return Promise.resolve(null);
    return batchedOne<Improvement>(ctx, 'improvement', async (ids) => {
      const rows = await this.database.improvement.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The proposal by which a search stands or stood last; null when it made none. */
  proposalOf(ctx: Context, improvementId: string): Promise<Proposal | null> {
    return this.database.proposal.findFirst({
      where: { companyId: ctx.companyId, improvementId },
      orderBy: { number: 'desc' },
    });
  }
}
