import { Injectable } from '@nestjs/common';
import type { CurePrediction, CureRequest } from '../../shared/cure/prediction/cure-prediction.js';
import { predictCure } from '../../shared/cure/prediction/predict-cure.js';
import type { Placement, TemperatureReading } from '../generated/prisma/client.js';
import { Clock } from '../platform/clock/clock.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { isRowId } from '../platform/row-id.js';
import { cureRequestOf } from './outlook/cure-request.js';
import { type SiteAir, siteAir } from './outlook/site-air.js';
import { strengthEstimateOf } from './strength-estimate-of.js';
import type { StrengthEstimate } from './strength-estimate.model.js';

/** Reads placements with their temperatures; everything is batched within the request. */
@Injectable()
export class PlacementReader {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** One placement of the company; null when there is none. */
  async byId(ctx: Context, id: string | null): Promise<Placement | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<Placement>(ctx, 'placement', async (ids) => {
      const rows = await this.database.placement.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The placements of a job in the order they were placed. */
  ofJob(ctx: Context, jobId: string): Promise<Placement[]> {
    return batchedMany<Placement>(ctx, 'placements of job', async (ids) => {
      const rows = await this.database.placement.findMany({
        where: { companyId: ctx.companyId, jobId: { in: [...ids] } },
        orderBy: [{ placedAt: 'asc' }, { id: 'asc' }],
      });
      return rows.map((row) => [row.jobId, row] as const);
    }).load(jobId);
  }

  /** The temperatures read in a placement, in order. */
  readings(ctx: Context, placementId: string): Promise<TemperatureReading[]> {
    return batchedMany<TemperatureReading>(ctx, 'temperatures of placement', async (ids) => {
      const rows = await this.database.temperatureReading.findMany({
        where: { companyId: ctx.companyId, placementId: { in: [...ids] } },
        orderBy: { at: 'asc' },
      });
      return rows.map((row) => [row.placementId, row] as const);
    }).load(placementId);
  }

  /** What the core needs to tell how a placement goes. */
  async request(ctx: Context, row: Placement): Promise<CureRequest> {
    const [readings, air] = await Promise.all([this.readings(ctx, row.id), this.airAt(ctx, row.jobId)]);
    return cureRequestOf({ ...row, readings }, this.clock.now(), air);
  }

  /** How a placement goes: measured up to the last reading, predicted from there on. Computed once in a request. */
  async prediction(ctx: Context, { id }: Placement): Promise<CurePrediction> {
    const found = await batchedOne<CurePrediction>(ctx, 'cure predictions', (ids) =>
      Promise.all(ids.map(async (one) => [one, await this.predict(ctx, one)] as const)),
    ).load(id);
    if (found === null) throw new Error(`Placement ${id} vanished while it was read`);
    return found;
  }

  private async predict(ctx: Context, id: string): Promise<CurePrediction> {
    const row = await this.byId(ctx, id);
    if (row === null) throw new Error(`Placement ${id} vanished while it was read`);
    return predictCure(await this.request(ctx, row));
  }

  /** The strength of a placement by what was read in it, or predicted where nothing was. */
  async strength(ctx: Context, row: Placement): Promise<StrengthEstimate> {
    const readings = await this.readings(ctx, row.id);
    return strengthEstimateOf({ ...row, readings }, this.clock.now(), () => this.prediction(ctx, row));
  }

  private async airAt(ctx: Context, jobId: string): Promise<SiteAir> {
    const air = await batchedOne<SiteAir>(ctx, 'air at job', async (ids) => {
      const jobs = await this.database.job.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
        select: { id: true, siteId: true },
      });
      const siteIds = [...new Set(jobs.map(({ siteId }) => siteId))];
      const of = await siteAir(this.database, ctx.companyId, siteIds, this.clock.now());
      return jobs.map(({ id, siteId }) => [id, of(siteId)] as const);
    }).load(jobId);
    if (air === null) throw new Error(`Placement of job ${jobId}, which does not exist`);
    return air;
  }
}
