import { Injectable } from '@nestjs/common';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { isRowId } from '../platform/row-id.js';
import { type PhotoRow, WITH_SIZE } from './photo-row.js';

const IN_TURN = [{ takenAt: 'asc' }, { id: 'asc' }] as const;

/** Reads photos without their pictures; everything is batched within the request. */
@Injectable()
export class PhotoReader {
  constructor(private readonly database: Database) {}

  /** One photo of the company; null when there is none. */
  async byId(ctx: Context, id: string): Promise<PhotoRow | null> {
    if (!isRowId(id)) return null;
    return batchedOne<PhotoRow>(ctx, 'photo', async (ids) => {
      const rows = await this.database.photo.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
        include: WITH_SIZE,
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The photos of a job in the order they were taken. */
  ofJob(ctx: Context, jobId: string): Promise<PhotoRow[]> {
    return this.photos(ctx, 'jobId').load(jobId);
  }

  /** The photos of a phase in the order they were taken. */
  ofPhase(ctx: Context, phaseId: string): Promise<PhotoRow[]> {
    return this.photos(ctx, 'phaseId').load(phaseId);
  }

  private photos(ctx: Context, by: 'jobId' | 'phaseId') {
    return batchedMany<PhotoRow>(ctx, `photos by ${by}`, async (ids) => {
      const rows = await this.database.photo.findMany({
        where: { companyId: ctx.companyId, [by]: { in: [...ids] } },
        include: WITH_SIZE,
        orderBy: [...IN_TURN],
      });
      return rows.map((row) => [row[by], row] as const);
    });
  }
}
