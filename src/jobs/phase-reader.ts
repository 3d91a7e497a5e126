import { Injectable } from '@nestjs/common';
import type { Link, Phase } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { isRowId } from '../platform/row-id.js';

/** Reads phases and links; everything is batched within the request. */
@Injectable()
export class PhaseReader {
  constructor(private readonly database: Database) {}

  /** One phase of the company; null when there is none. */
  async byId(ctx: Context, id: string | null): Promise<Phase | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<Phase>(ctx, 'phase', async (ids) => {
      const rows = await this.database.phase.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** Those of the phases that exist, in the order asked for. */
  async byIds(ctx: Context, ids: readonly string[]): Promise<Phase[]> {
    const found = await Promise.all(ids.map((id) => this.byId(ctx, id)));
    return found.filter((phase) => phase !== null);
  }

  /** The phases of a job in their order, dropped ones too. */
  ofJob(ctx: Context, jobId: string): Promise<Phase[]> {
    return batchedMany<Phase>(ctx, 'phases of job', async (ids) => {
      const rows = await this.database.phase.findMany({
        where: { companyId: ctx.companyId, jobId: { in: [...ids] } },
        orderBy: [{ position: 'asc' }, { id: 'asc' }],
      });
      return rows.map((row) => [row.jobId, row] as const);
    }).load(jobId);
  }

  /** One link of the company; null when there is none. */
  async linkById(ctx: Context, id: string): Promise<Link | null> {
    if (!isRowId(id)) return null;
    return batchedOne<Link>(ctx, 'link', async (ids) => {
      const rows = await this.database.link.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The links of a job. */
  linksOfJob(ctx: Context, jobId: string): Promise<Link[]> {
    return this.links(ctx, 'jobId').load(jobId);
  }

  /** The links a phase waits by. */
  linksInto(ctx: Context, phaseId: string): Promise<Link[]> {
    return this.links(ctx, 'toId').load(phaseId);
  }

  /** The links by which others wait for a phase. */
  linksOutOf(ctx: Context, phaseId: string): Promise<Link[]> {
    return this.links(ctx, 'fromId').load(phaseId);
  }

  private links(ctx: Context, by: 'jobId' | 'fromId' | 'toId') {
    return batchedMany<Link>(ctx, `links by ${by}`, async (ids) => {
      const rows = await this.database.link.findMany({
        where: { companyId: ctx.companyId, [by]: { in: [...ids] } },
        orderBy: { id: 'asc' },
      });
      return rows.map((row) => [row[by], row] as const);
    });
  }
}
