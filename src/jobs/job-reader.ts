import { Injectable } from '@nestjs/common';
import type { Area, Clearance, Job, JobState } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { type Connection, type PageArgs, pageOf } from '../platform/graphql/page.js';
import { rowAfter } from '../platform/graphql/row-after.js';
import { isRowId } from '../platform/row-id.js';

/** Reads jobs with their areas and clearances; single rows are batched within the request. */
@Injectable()
export class JobReader {
  constructor(private readonly database: Database) {}

  /** A page of the jobs in the order they were entered. */
  page(ctx: Context, args: PageArgs, state: JobState | null): Promise<Connection<Job>> {
    return pageOf(args, ({ take, after }) =>
      this.database.job.findMany({
        where: { companyId: ctx.companyId, ...(state ? { state } : {}), ...rowAfter(after) },
        orderBy: { id: 'asc' },
        take,
      }),
    );
  }

  /** One job of the company; null when there is none. */
  async byId(ctx: Context, id: string | null): Promise<Job | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<Job>(ctx, 'job', async (ids) => {
      const rows = await this.database.job.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The job of that number; null when there is none. */
  byNumber(ctx: Context, number: number): Promise<Job | null> {
    return this.database.job.findUnique({
      where: { companyId_number: { companyId: ctx.companyId, number } },
    });
  }

  /** One area of the company; null when there is none. */
  async areaById(ctx: Context, id: string | null): Promise<Area | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<Area>(ctx, 'area', async (ids) => {
      const rows = await this.database.area.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The areas of a job from the door outwards. */
  areas(ctx: Context, jobId: string): Promise<Area[]> {
    return batchedMany<Area>(ctx, 'areas of job', async (ids) => {
      const rows = await this.database.area.findMany({
        where: { companyId: ctx.companyId, jobId: { in: [...ids] } },
        orderBy: { position: 'asc' },
      });
      return rows.map((row) => [row.jobId, row] as const);
    }).load(jobId);
  }

  /** One clearance of the company; null when there is none. */
  async clearanceById(ctx: Context, id: string | null): Promise<Clearance | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<Clearance>(ctx, 'clearance', async (ids) => {
      const rows = await this.database.clearance.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The clearances of a job. */
  clearances(ctx: Context, jobId: string): Promise<Clearance[]> {
    return batchedMany<Clearance>(ctx, 'clearances of job', async (ids) => {
      const rows = await this.database.clearance.findMany({
        where: { companyId: ctx.companyId, jobId: { in: [...ids] } },
        orderBy: { key: 'asc' },
      });
      return rows.map((row) => [row.jobId, row] as const);
    }).load(jobId);
  }
}
