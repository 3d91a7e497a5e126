import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import { WrongState } from '../../phases/phases.face.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { given } from '../../platform/given.js';
import { demandRevision } from '../../platform/outcomes/demand.js';
import { orLeftOut } from '../../platform/outcomes/left-out.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { demandJob, demandLive } from '../demand-job.js';
import { jobName, jobPriority } from '../job-schema.js';
import { reasonText } from '../reason-schema.js';
import type { CancelJobInput, UpdateJobInput } from './jobs.inputs.js';

const changedJob = z.object({
  name: orLeftOut(jobName),
  ownerName: orLeftOut(jobName),
  priority: orLeftOut(jobPriority),
});

/** Changes jobs as a whole, and gives them up. */
@Injectable()
export class JobsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Changes what is given. */
  update(ctx: Context, input: UpdateJobInput) {
    return this.changes.run(ctx, { operation: 'updateJob', input }, async (change) => {
      const job = await demandJob(change, input.jobId);
      demandRevision(job, input.revision, 'job');
      demandLive(job);
      const data = given({ ...parseInput(changedJob, input), dueAt: input.dueAt });
      await change.tx.job.update({ where: { id: job.id }, data: { ...data, revision: { increment: 1 } } });
      change.record({
        action: 'job changed',
        subjectType: 'job',
        subjectId: job.id,
        jobId: job.id,
        detail: { ...data, ...(data.dueAt ? { dueAt: data.dueAt.toISOString() } : {}) },
      });
      return { jobId: job.id };
    });
  }

  /** Gives a job up: its commitments are released and the plan leaves it out. Nothing of it may be under way. */
  cancel(ctx: Context, input: CancelJobInput) {
    return this.changes.run(ctx, { operation: 'cancelJob', input }, async (change) => {
      const job = await demandJob(change, input.jobId);
      demandRevision(job, input.revision, 'job');
      demandLive(job);
      const { reason } = parseInput(z.object({ reason: reasonText }), input);
      const started = await change.tx.phase.findMany({ where: { jobId: job.id, state: 'started' } });
      if (started.length > 0) {
        const names = started.map((phase) => phase.name).join(', ');
        throw new Refused(
          new WrongState(
            job.state,
            `${names}: under way. Finish or put back what is started, then cancel the job.`,
          ),
        );
      }
      await change.tx.job.update({
        where: { id: job.id },
        data: { state: 'cancelled', revision: { increment: 1 } },
      });
      const released = await change.tx.commitment.updateMany({
        where: { phase: { jobId: job.id }, state: 'held' },
        data: { state: 'released' },
      });
      change.record({
        action: 'job cancelled',
        subjectType: 'job',
        subjectId: job.id,
        jobId: job.id,
        detail: { releasedCommitments: released.count },
        reason,
      });
      return { jobId: job.id };
    });
  }
}
