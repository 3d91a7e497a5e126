import type { Change } from '../../platform/change/change.js';
import { answeredFor, newestForecastIds } from '../../weather/weather.face.js';
import type { PlanningRows } from './rows.js';

const DAY_MS = 24 * 60 * 60 * 1000;

/** Finished jobs stay in the plan so long, as facts: their last phase has to be written down once more. */
const DAYS_AFTER_END = 3;

/** Called holds that ended so long ago no longer matter to work that runs. */
const DAYS_OF_HOLDS = 60;

/** A company's rows at a moment: a change, or whoever only looks. */
export type RowsAt = Pick<Change, 'tx' | 'now'> & { readonly ctx: Pick<Change['ctx'], 'companyId'> };

/** Reads a company's rows for planning: a fixed number of queries, however many jobs there are. */
export async function readRows({ tx, ctx, now }: RowsAt): Promise<PlanningRows> {
  const { companyId } = ctx;
  const since = new Date(now.getTime() - DAYS_AFTER_END * DAY_MS);
  const jobs = await tx.job.findMany({
    where: {
      companyId,
      OR: [
        { state: { in: ['entered', 'running'] } },
        { state: 'done', phases: { some: { actualFinish: { gte: since } } } },
      ],
    },
    include: { site: { select: { id: true, zone: true, authorityId: true } } },
    orderBy: { id: 'asc' },
  });
  const jobId = { in: jobs.map(({ id }) => id) };
  const siteId = { in: [...new Set(jobs.map(({ site }) => site.id))] };
  const phases = await tx.phase.findMany({
    where: { companyId, jobId, state: { not: 'dropped' } },
    orderBy: { id: 'asc' },
  });
  const phaseId = { in: phases.map(({ id }) => id) };
  const held = new Date(now.getTime() - DAYS_OF_HOLDS * DAY_MS);
  return {
    company: await tx.company.findUniqueOrThrow({ where: { id: companyId } }),
    crews: await tx.crew.findMany({ where: { companyId }, include: { exceptions: true } }),
    pools: await tx.equipmentPool.findMany({ where: { companyId } }),
    authorities: await tx.authority.findMany({ where: { companyId } }),
    jobs,
    phases,
    links: await tx.link.findMany({ where: { companyId, fromId: phaseId, toId: phaseId } }),
    holds: await tx.equipmentHold.findMany({ where: { companyId, fromPhaseId: phaseId } }),
    holdPoints: await tx.holdPoint.findMany({
      where: { companyId, phaseId, kind: { in: ['inspection', 'clearance', 'cure'] } },
      orderBy: { id: 'asc' },
    }),
    clearances: await tx.clearance.findMany({ where: { companyId, jobId } }),
    inspections: await tx.inspection.findMany({
      where: { companyId, phaseId, state: { in: ['needed', 'requested', 'booked'] } },
      orderBy: { id: 'asc' },
    }),
    visits: await tx.plannedVisit.findMany({ where: { companyId } }),
    placements: await tx.placement.findMany({ where: { companyId, phaseId }, orderBy: { placedAt: 'asc' } }),
    choices: await tx.protectionChoice.findMany({ where: { companyId, phaseId } }),
    limitSets: await tx.weatherLimitSet.findMany({ where: { companyId } }),
    forecasts: await tx.forecast.findMany({
      where: { id: { in: await newestForecastIds(tx, companyId, siteId.in) } },
    }),
    weatherHolds: await tx.weatherHold.findMany({
      where: {
        companyId,
        siteId,
        OR: [
          { cause: 'called', liftedAt: null, endsAt: null },
          { cause: 'called', liftedAt: null, endsAt: { gt: held } },
          { cause: 'called', liftedAt: { gt: held } },
          answeredFor(now),
        ],
      },
      orderBy: { id: 'asc' },
    }),
    commitments: await tx.commitment.findMany({ where: { companyId, state: 'held', phaseId } }),
    planned: await tx.plannedPhase.findMany({ where: { companyId, phaseId } }),
  };
}
