import { Injectable } from '@nestjs/common';
import type { HoldPoint } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { isRowId } from '../platform/row-id.js';

/** Reads hold points; everything is batched within the request. */
@Injectable()
export class HoldPointReader {
  constructor(private readonly database: Database) {}

  /** One hold point of the company; null when there is none. */
  async byId(ctx: Context, id: string | null): Promise<HoldPoint | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<HoldPoint>(ctx, 'hold point', async (ids) => {
      const rows = await this.database.holdPoint.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** Those of the hold points that exist, in the order asked for. */
  async byIds(ctx: Context, ids: readonly string[]): Promise<HoldPoint[]> {
    const found = await Promise.all(ids.map((id) => this.byId(ctx, id)));
    return found.filter((point) => point !== null);
  }

  /** The hold points of a job, those of the start of a phase before those of its finish. */
  ofJob(ctx: Context, jobId: string): Promise<HoldPoint[]> {
    return this.by(ctx, 'jobId').load(jobId);
  }

  /** The hold points of a phase, those of its start before those of its finish. */
  ofPhase(ctx: Context, phaseId: string): Promise<HoldPoint[]> {
    return this.by(ctx, 'phaseId').load(phaseId);
  }

  private by(ctx: Context, column: 'jobId' | 'phaseId') {
    return batchedMany<HoldPoint>(ctx, `hold points by ${column}`, async (ids) => {
      const rows = await this.database.holdPoint.findMany({
        where: { companyId: ctx.companyId, [column]: { in: [...ids] } },
        orderBy: [{ phase: { position: 'asc' } }, { gate: 'asc' }, { id: 'asc' }],
      });
      return rows.map((row) => [row[column], row] as const);
    });
  }
}
