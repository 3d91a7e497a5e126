import { Injectable } from '@nestjs/common';
import type { Hookup, HookupState } from '../generated/prisma/client.js';
import { type HookupNeeds, needsByHookup } from '../heating/heating.face.js';
import { Clock } from '../platform/clock/clock.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { type Connection, type PageArgs, pageOf } from '../platform/graphql/page.js';
import { rowAfter } from '../platform/graphql/row-after.js';
import { isRowId } from '../platform/row-id.js';

/** Reads hookups and their needs; single ones are batched within the request. */
@Injectable()
export class HookupReader {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** A page of hookups in the order they were made. */
  page(ctx: Context, args: PageArgs, state: HookupState | null): Promise<Connection<Hookup>> {
    return pageOf(args, ({ take, after }) =>
      this.database.hookup.findMany({
        where: { companyId: ctx.companyId, ...(state ? { state } : {}), ...rowAfter(after) },
        orderBy: { id: 'asc' },
        take,
      }),
    );
  }

  /** One hookup of the company; null when there is none. */
  async byId(ctx: Context, id: string | null): Promise<Hookup | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<Hookup>(ctx, 'hookup', async (ids) => {
      const rows = await this.database.hookup.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The hookups of a job. */
  ofJob(ctx: Context, jobId: string): Promise<Hookup[]> {
    return batchedMany<Hookup>(ctx, 'hookups of job', async (ids) => {
      const rows = await this.database.hookup.findMany({
        where: { companyId: ctx.companyId, jobId: { in: [...ids] } },
        orderBy: { heatingSet: { key: 'asc' } },
      });
      return rows.map((row) => [row.jobId, row] as const);
    }).load(jobId);
  }

  /** The hookup of a heating set; null when there is none. */
  ofSet(ctx: Context, heatingSetId: string): Promise<Hookup | null> {
    return batchedOne<Hookup>(ctx, 'hookup of heating set', async (ids) => {
      const rows = await this.database.hookup.findMany({
        where: { companyId: ctx.companyId, heatingSetId: { in: [...ids] } },
      });
      return rows.map((row) => [row.heatingSetId, row] as const);
    }).load(heatingSetId);
  }

  /** The needs of a hookup as the rows stand now. */
  async needs(ctx: Context, hookup: Hookup): Promise<HookupNeeds> {
    const needs = await batchedOne<HookupNeeds>(ctx, 'needs of hookup', async (ids) => {
      const rows = await this.database.hookup.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return [...(await needsByHookup(this.database, ctx.companyId, rows, this.clock.now()))];
    }).load(hookup.id);
    return needs ?? { hookup: [], energising: [], bedCuredAt: null };
  }
}
