import { Injectable } from '@nestjs/common';
import type { Proposal, ProposedMove } from '../../generated/prisma/client.js';
import type { Context } from '../../platform/context.js';
import { Database } from '../../platform/database/database.js';
import { batchedOne } from '../../platform/graphql/batched.js';
import { isRowId } from '../../platform/row-id.js';

/** Reads the moves that the office has tried. */
@Injectable()
export class MoveReader {
  constructor(private readonly database: Database) {}

  /** The move asked for last; null when there never was one. */
  newest(ctx: Context): Promise<ProposedMove | null> {
    return this.database.proposedMove.findFirst({
      where: { companyId: ctx.companyId },
      orderBy: [{ askedAt: 'desc' }, { id: 'desc' }],
    });
  }

  /** One move of the company; null when there is none. */
  byId(ctx: Context, id: string | null): Promise<ProposedMove | null> {
    if (id === null || !isRowId(id)) return Promise.resolve(null);
    return batchedOne<ProposedMove>(ctx, 'proposed move', async (ids) => {
      const rows = await this.database.proposedMove.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The proposal by which a move stands or stood last; null when it made none. */
  proposalOf(ctx: Context, moveId: string): Promise<Proposal | null> {
    return this.database.proposal.findFirst({
      where: { companyId: ctx.companyId, moveId },
      orderBy: { number: 'desc' },
    });
  }
}
