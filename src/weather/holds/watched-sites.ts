import type { Prisma } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { HOUR_MS } from '../../../shared/units/time.js';
import { newestForecastIds } from '../newest-forecasts.js';
import { answeredFor, standingHold } from '../standing-hold.js';

/** How far ahead a forecast holds work. */
export const AHEAD_MS = 72 * HOUR_MS;

const WATCHED = {
  job: { select: { siteId: true, state: true } },
  planned: { select: { segments: true } },
  commitments: { where: { state: 'held' }, select: { startAt: true, finishAt: true } },
  holds: { select: { pool: { select: { kind: true } } } },
} satisfies Prisma.PhaseInclude;

const ofForecast = (now: Date) =>
  ({ cause: 'forecast', OR: [standingHold(now), answeredFor(now)] }) satisfies Prisma.WeatherHoldWhereInput;

/** A phase that weather matters to, with its holds of the forecast that stand or that a person answers for. */
export type WatchedPhase = Prisma.PhaseGetPayload<{
  include: typeof WATCHED & { weatherHolds: true };
}>;

/** A site whose forecast may hold work. */
export interface WatchedSite {
  readonly id: string;
  readonly zone: string;
  /** What its holds rested on when it was last looked at. */
  readonly weatherPrint: string | null;
  readonly forecastId: string;
  readonly phases: readonly WatchedPhase[];
}

/** Work that the plan, a promise or a pin has before an instant. */
const expectedBefore = (at: Date): Prisma.PhaseWhereInput[] => [
  { planned: { startAt: { lt: at } } },
  { commitments: { some: { state: 'held', startAt: { lt: at } } } },
  { pinnedStart: { lt: at } },
];

/** The sites of a company that have a forecast and work of the time ahead to hold, or held work: a fixed number of queries. */
export async function watchedSites({ tx, ctx, now }: Change): Promise<WatchedSite[]> {
  const { companyId } = ctx;
  if (!(await tx.forecast.findFirst({ where: { companyId }, select: { id: true } }))) return [];
  const phases = await tx.phase.findMany({
    where: {
      companyId,
      job: { site: { forecasts: { some: {} } } },
      OR: [
        {
          weatherLimitKey: { not: null },
          state: { in: ['waiting', 'started'] },
          job: { state: { in: ['entered', 'running'] } },
          OR: expectedBefore(new Date(now.getTime() + AHEAD_MS)),
        },
        { weatherHolds: { some: { ...ofForecast(now), liftedAt: null } } },
      ],
    },
    include: {
      ...WATCHED,
      weatherHolds: { where: ofForecast(now), orderBy: [{ startsAt: 'asc' }, { id: 'asc' }] },
    },
    orderBy: { id: 'asc' },
  });
  const siteIds = [...new Set(phases.map(({ job }) => job.siteId))];
  if (siteIds.length === 0) return [];
  const newest = await tx.forecast.findMany({
    where: { id: { in: await newestForecastIds(tx, companyId, siteIds) } },
    select: { id: true, site: { select: { id: true, zone: true, weatherPrint: true } } },
    orderBy: { siteId: 'asc' },
  });
  return newest.map(({ id, site }) => ({
    ...site,
    forecastId: id,
    phases: phases.filter(({ job }) => job.siteId === site.id),
  }));
}

/** Whether there is still work of the phase to hold. */
export const isLive = ({ state, job }: WatchedPhase): boolean =>
  (state === 'waiting' || state === 'started') && (job.state === 'entered' || job.state === 'running');
