import { Injectable } from '@nestjs/common';
import type { Inspection, Proposal } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import type { BoardRows } from './board.service.js';

/** Reads what stands on the board beside the phases. */
@Injectable()
export class BoardExtrasReader {
  constructor(private readonly database: Database) {}

  /** Inspections of the board's jobs with a visit in its stretch, planned or booked, or with a result there. */
  inspections(ctx: Context, { from, to, jobs }: BoardRows): Promise<Inspection[]> {
    return this.database.inspection.findMany({
      where: {
        companyId: ctx.companyId,
        jobId: { in: jobs.map(({ id }) => id) },
        OR: [
          { visitFrom: { lt: to }, visitTo: { gte: from } },
          { planned: { is: { startAt: { lt: to }, finishAt: { gte: from } } } },
          { resultAt: { gte: from, lt: to } },
        ],
      },
      orderBy: [{ jobId: 'asc' }, { key: 'asc' }, { attempt: 'asc' }],
    });
  }

  /** The company's open proposal that follows the plan in force; there is at most one. */
  openProposal(ctx: Context): Promise<Proposal | null> {
    return this.database.proposal.findFirst({
      where: { companyId: ctx.companyId, state: 'open', improvementId: null, moveId: null },
    });
  }
}
