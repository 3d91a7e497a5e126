import { Injectable } from '@nestjs/common';
import type { Delivery, Notice } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany } from '../platform/graphql/batched.js';
import { type Connection, type PageArgs, pageOf } from '../platform/graphql/page.js';
import { rowAfter } from '../platform/graphql/row-after.js';
import { isRowId } from '../platform/row-id.js';

/** Reads notices and their deliveries. */
@Injectable()
export class NoticesService {
  constructor(private readonly database: Database) {}

  /** A page of the notices in the order they were written, of one job when it is given. */
  page(ctx: Context, args: PageArgs, jobId: string | null): Promise<Connection<Notice>> {
    return pageOf(args, ({ take, after }) =>
      jobId !== null && !isRowId(jobId)
        ? Promise.resolve([])
        : this.database.notice.findMany({
            where: { companyId: ctx.companyId, ...(jobId ? { jobId } : {}), ...rowAfter(after) },
            orderBy: { id: 'asc' },
            take,
          }),
    );
  }

  /** The deliveries of a notice. */
  deliveries(ctx: Context, noticeId: string): Promise<Delivery[]> {
    return batchedMany<Delivery>(ctx, 'deliveries of notice', async (ids) => {
      const rows = await this.database.delivery.findMany({
        where: { companyId: ctx.companyId, noticeId: { in: [...ids] } },
        orderBy: { id: 'asc' },
      });
      return rows.map((row) => [row.noticeId, row] as const);
    }).load(noticeId);
  }
}
