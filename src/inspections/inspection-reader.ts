import { Injectable } from '@nestjs/common';
import type { Inspection, InspectionState, PlannedVisit } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { type Connection, type PageArgs, pageOf } from '../platform/graphql/page.js';
import { rowAfter } from '../platform/graphql/row-after.js';
import { isRowId } from '../platform/row-id.js';

/** Reads inspections; single ones are batched within the request. */
@Injectable()
export class InspectionReader {
  constructor(private readonly database: Database) {}

  /** A page of inspections in the order they were made. */
  page(ctx: Context, args: PageArgs, state: InspectionState | null): Promise<Connection<Inspection>> {
    return pageOf(args, ({ take, after }) =>
      this.database.inspection.findMany({
        where: { companyId: ctx.companyId, ...(state ? { state } : {}), ...rowAfter(after) },
        orderBy: { id: 'asc' },
        take,
      }),
    );
  }

  /** One inspection of the company; null when there is none. */
  async byId(ctx: Context, id: string | null): Promise<Inspection | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<Inspection>(ctx, 'inspection', async (ids) => {
      const rows = await this.database.inspection.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** Those of the inspections that exist, in the order asked for. */
  async byIds(ctx: Context, ids: readonly string[]): Promise<Inspection[]> {
    const found = await Promise.all(ids.map((id) => this.byId(ctx, id)));
    return found.filter((inspection) => inspection !== null);
  }

  /** The inspections of a job by key and attempt. */
  ofJob(ctx: Context, jobId: string): Promise<Inspection[]> {
    return batchedMany<Inspection>(ctx, 'inspections of job', async (ids) => {
      const rows = await this.database.inspection.findMany({
        where: { companyId: ctx.companyId, jobId: { in: [...ids] } },
        orderBy: [{ key: 'asc' }, { attempt: 'asc' }],
      });
      return rows.map((row) => [row.jobId, row] as const);
    }).load(jobId);
  }

  /** When the plan expects the visit; null for one that is over or that the plan could not place. */
  plannedVisit(ctx: Context, inspectionId: string): Promise<PlannedVisit | null> {
    return batchedOne<PlannedVisit>(ctx, 'planned visit', async (ids) => {
      const rows = await this.database.plannedVisit.findMany({
        where: { companyId: ctx.companyId, inspectionId: { in: [...ids] } },
      });
      return rows.map((row) => [row.inspectionId, row] as const);
    }).load(inspectionId);
  }
}
