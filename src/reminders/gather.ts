import type { Transaction } from '../platform/database/database.js';
import type { JobFacts, ReminderFacts } from './facts.js';

/** Reads the facts of a company's live jobs: a fixed number of queries, whatever the number of jobs. */
export async function gatherFacts(tx: Transaction, companyId: string): Promise<ReminderFacts> {
  const live = { companyId, state: { in: ['entered' as const, 'running' as const] } };
  const ofLive = { companyId, job: { state: live.state } };
  const unfinished = { state: { in: ['waiting' as const, 'started' as const] } };
  const company = await tx.company.findUniqueOrThrow({ where: { id: companyId } });
  const jobs = await tx.job.findMany({ where: live, include: { site: true }, orderBy: { id: 'asc' } });
  const phases = await tx.phase.findMany({
    where: { ...ofLive, ...unfinished },
    include: { area: true, planned: true, holdPoints: true, holds: { include: { pool: true } } },
    orderBy: { id: 'asc' },
  });
  const inspections = await tx.inspection.findMany({
    where: { ...ofLive, state: { in: ['needed', 'requested', 'booked'] } },
    include: { planned: true },
    orderBy: { id: 'asc' },
  });
  const clearances = await tx.clearance.findMany({ where: ofLive, orderBy: { id: 'asc' } });
  const placements = await tx.placement.findMany({ where: ofLive, orderBy: { id: 'asc' } });
  const openProposal = await tx.proposal.findFirst({ where: { companyId, state: 'open' } });
  return {
    zone: company.zone,
    openProposal,
    jobs: jobs.map(({ site, ...job }): JobFacts => {
      const ofJob = <T extends { jobId: string }>(rows: readonly T[]): T[] =>
        rows.filter(({ jobId }) => jobId === job.id);
      return {
        job,
        site,
        phases: ofJob(phases),
        inspections: ofJob(inspections),
        clearances: ofJob(clearances),
        placements: ofJob(placements),
      };
    }),
  };
}
