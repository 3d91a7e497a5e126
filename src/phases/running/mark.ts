import type { Phase } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';

/** How a phase came to start or finish. */
export interface Mark {
  readonly at: Date;
  readonly crewId?: string | null;
  /** True for a wait that nobody starts by hand. */
  readonly byItself?: boolean;
}

/** Writes a start and lets the job run. */
export async function markStarted(change: Change, phase: Phase, mark: Mark): Promise<void> {
  const { at, crewId = null } = mark;
  await change.tx.phase.update({
    where: { id: phase.id },
    data: {
      state: 'started',
      actualStart: at,
      actualCrewId: crewId,
      remainingMinutes: null,
      note: null,
      revision: { increment: 1 },
    },
  });
  await change.tx.job.updateMany({
    where: { id: phase.jobId, state: 'entered' },
    data: { state: 'running', revision: { increment: 1 } },
  });
  record(change, phase, 'phase started', mark);
}

/** Writes a finish; the commitment is kept, and the job is done with its last phase. */
export async function markFinished(change: Change, phase: Phase, mark: Mark): Promise<void> {
  const { companyId } = change.ctx;
  await change.tx.phase.update({
    where: { id: phase.id },
    data: { state: 'done', actualFinish: mark.at, remainingMinutes: null, revision: { increment: 1 } },
  });
  await change.tx.commitment.updateMany({
    where: { companyId, phaseId: phase.id, state: 'held' },
    data: { state: 'kept' },
  });
  record(change, phase, 'phase finished', mark);
  const left = await change.tx.phase.count({
    where: { companyId, jobId: phase.jobId, state: { in: ['waiting', 'started'] } },
  });
  if (left > 0) return;
  await change.tx.job.updateMany({
    where: { id: phase.jobId, state: { in: ['entered', 'running'] } },
    data: { state: 'done', revision: { increment: 1 } },
  });
}

function record(change: Change, phase: Phase, action: string, { at, crewId, byItself }: Mark): void {
  change.record({
    action,
    subjectType: 'phase',
    subjectId: phase.id,
    jobId: phase.jobId,
    detail: {
      name: phase.name,
      at: at.toISOString(),
      ...(crewId && { crewId }),
      ...(byItself && { byItself }),
    },
  });
}
