import { Injectable } from '@nestjs/common';
import type { Phase } from '../generated/prisma/client.js';
import { Clock } from '../platform/clock/clock.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { CodedError } from '../platform/graphql/coded-error.js';
import { protectionOf } from './protection.js';
import { shownWindows } from './shown-windows.js';
import { WeatherReader } from './weather-reader.js';
import type { WeatherWindows } from './weather-windows.model.js';

const DAY_MS = 24 * 3_600_000;

/** What is looked at unless asked otherwise, and the most that is. */
const USUAL_DAYS = 7;
const MOST_DAYS = 92;

/** A stretch to look at; what is left out begins now and lasts a week. */
export interface StretchAsked {
  readonly from: Date | null;
  readonly to: Date | null;
}

/** Reads the windows of sites and phases; rows are batched within the request. */
@Injectable()
export class WindowsReader {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly weather: WeatherReader,
  ) {}

  /** The windows of kinds of work at a site without protection, by name; all kinds unless some are asked for. */
  async ofSite(
    ctx: Context,
    siteId: string,
    keys: readonly string[] | null,
    asked: StretchAsked,
  ): Promise<WeatherWindows[]> {
    const stretch = this.stretchOf(asked);
    const forecast = await this.weather.forecastOf(ctx, siteId);
    const sets = await this.weather.limitSets(ctx);
    return sets
      .filter(({ key }) => keys === null || keys.includes(key))
      .map((set) => shownWindows({ forecast, set, protection: [], ...stretch }));
  }

  /** The windows of a phase under the protection it takes; null when weather does not matter to it. */
  async ofPhase(ctx: Context, phase: Phase, asked: StretchAsked): Promise<WeatherWindows | null> {
    if (phase.weatherLimitKey === null) return null;
    const stretch = this.stretchOf(asked);
    const sets = await this.weather.limitSets(ctx);
    const set = sets.find(({ key }) => key === phase.weatherLimitKey);
    const siteId = await this.siteOfJob(ctx, phase.jobId);
    if (!set || siteId === null) return null;
    const forecast = await this.weather.forecastOf(ctx, siteId);
    const protection = await this.protectionOfPhase(ctx, phase.id);
    return shownWindows({ forecast, set, protection, ...stretch });
  }

  private stretchOf({ from, to }: StretchAsked): { from: Date; to: Date } {
    const begin = from ?? this.clock.now();
    const end = to ?? new Date(begin.getTime() + USUAL_DAYS * DAY_MS);
    if (end <= begin) throw new CodedError('bad-request', 'to must lie after from; give a later end.');
    if (end.getTime() - begin.getTime() > MOST_DAYS * DAY_MS)
      throw new CodedError('bad-request', `from and to lie more than ${MOST_DAYS} days apart; ask for less.`);
    return { from: begin, to: end };
  }

  private siteOfJob(ctx: Context, jobId: string): Promise<string | null> {
    return batchedOne<string>(ctx, 'site of job', async (ids) => {
      const rows = await this.database.job.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
        select: { id: true, siteId: true },
      });
      return rows.map(({ id, siteId }) => [id, siteId] as const);
    }).load(jobId);
  }

  private async protectionOfPhase(ctx: Context, phaseId: string): Promise<string[]> {
    const taken = await batchedMany<{ pool: { kind: string } }>(ctx, 'protection of phase', async (ids) => {
      const rows = await this.database.equipmentHold.findMany({
        where: { companyId: ctx.companyId, fromPhaseId: { in: [...ids] } },
        select: { fromPhaseId: true, pool: { select: { kind: true } } },
      });
      return rows.map(({ fromPhaseId, pool }) => [fromPhaseId, { pool }] as const);
    }).load(phaseId);
    return protectionOf(taken);
  }
}
