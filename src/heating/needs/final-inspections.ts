import type { Transaction } from '../../platform/database/database.js';

/** Key of the final inspection in a template. */
const FINAL = 'final';

/**
 * Whether the final inspection of each job has passed, by its latest visit. A job without one of that name needs
 * every inspection it has to have passed, and at least one.
 */
export async function finalInspections(
  tx: Transaction,
  companyId: string,
  jobIds: readonly string[],
): Promise<(jobId: string) => boolean> {
  const visits = await tx.inspection.findMany({
    where: { companyId, jobId: { in: [...jobIds] }, next: null },
    select: { jobId: true, key: true, state: true },
  });
  return (jobId) => {
    const ofJob = visits.filter((visit) => visit.jobId === jobId);
    const final = ofJob.filter(({ key }) => key === FINAL);
    const asked = final.length > 0 ? final : ofJob;
    return asked.length > 0 && asked.every(({ state }) => state === 'passed');
  };
}
