import { Injectable } from '@nestjs/common';
import type { Area, CableReading, HeatingSet } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { isRowId } from '../platform/row-id.js';

/** Reads heating sets and their readings; everything is batched within the request. */
@Injectable()
export class HeatingReader {
  constructor(private readonly database: Database) {}

  /** One heating set of the company; null when there is none. */
  async byId(ctx: Context, id: string | null): Promise<HeatingSet | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<HeatingSet>(ctx, 'heating set', async (ids) => {
      const rows = await this.database.heatingSet.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The heating sets of a job by key. */
  ofJob(ctx: Context, jobId: string): Promise<HeatingSet[]> {
    return batchedMany<HeatingSet>(ctx, 'heating sets of job', async (ids) => {
      const rows = await this.database.heatingSet.findMany({
        where: { companyId: ctx.companyId, jobId: { in: [...ids] } },
        orderBy: { key: 'asc' },
      });
      return rows.map((row) => [row.jobId, row] as const);
    }).load(jobId);
  }

  /** The areas that the uncut cable of a set runs through, in turn. */
  areas(ctx: Context, heatingSetId: string): Promise<Area[]> {
    return batchedMany<Area>(ctx, 'areas of heating set', async (ids) => {
      const rows = await this.database.heatingSetArea.findMany({
        where: { companyId: ctx.companyId, heatingSetId: { in: [...ids] } },
        include: { area: true },
        orderBy: { position: 'asc' },
      });
      return rows.map((row) => [row.heatingSetId, row.area] as const);
    }).load(heatingSetId);
  }

  /** The readings of a set in order of time. */
  readings(ctx: Context, heatingSetId: string): Promise<CableReading[]> {
    return batchedMany<CableReading>(ctx, 'readings of heating set', async (ids) => {
      const rows = await this.database.cableReading.findMany({
        where: { companyId: ctx.companyId, heatingSetId: { in: [...ids] } },
        orderBy: [{ at: 'asc' }, { id: 'asc' }],
      });
      return rows.map((row) => [row.heatingSetId, row] as const);
    }).load(heatingSetId);
  }

  /** One reading of the company; null when there is none. */
  async readingById(ctx: Context, id: string | null): Promise<CableReading | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<CableReading>(ctx, 'cable reading', async (ids) => {
      const rows = await this.database.cableReading.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }
}
