import type { Job } from '../generated/prisma/client.js';
import type { Change } from '../platform/change/change.js';
import { companyRow } from '../platform/database/company-row.js';
import { demandFound } from '../platform/outcomes/demand.js';
import { Refused } from '../platform/outcomes/refusal.js';
import { WrongState } from '../phases/phases.face.js';

/** The job inside a change. @throws Refused with NotFound when the company has none of that id. */
export async function demandJob(change: Change, id: string): Promise<Job> {
  return demandFound(await change.tx.job.findFirst({ where: companyRow(change, id) }), 'job');
}

/** @throws Refused with WrongState when the job is done or cancelled: nothing of it changes any more. */
export function demandLive(job: Job): void {
  if (job.state === 'entered' || job.state === 'running') return;
  throw new Refused(
    new WrongState(
      job.state,
      `Job ${job.number} is ${job.state}; only a job that is entered or running can be changed.`,
    ),
  );
}
