import { Injectable } from '@nestjs/common';
import type { Phase, PlannedPhase } from '../../generated/prisma/client.js';
import { WrongState } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { refuseInput } from '../../platform/outcomes/demand-past.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import type { CommitJobInput, CommitPhaseInput, ReleaseCommitmentInput } from './commitment.inputs.js';
import { demandCrewFor, demandOpenPhase, demandPhase, demandPlannable } from './demand-open-phase.js';
import { demandAfterPredecessors } from './predecessor-bounds.js';
import { type Promised, releaseHeld, writeCommitments } from './write-commitments.js';

/** Promises dates to people, and takes promises back. */
@Injectable()
export class CommitmentsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Promises one phase, as planned or as given; an earlier promise of it is replaced. */
  commitPhase(ctx: Context, input: CommitPhaseInput) {
    return this.changes.run(ctx, { operation: 'commitPhase', input }, async (change) => {
      const phase = await demandOpenPhase(change, input);
      const planned = await change.tx.plannedPhase.findUnique({ where: { phaseId: phase.id } });
      const dates = datesOf(change, phase, planned, input);
      await demandAfterPredecessors(change, phase, dates);
      const crew = input.crewId ? await demandCrewFor(change, phase, input.crewId) : null;
      const crewId = crew?.id ?? planned?.crewId ?? null;
      if (crewId === null && needsCrew(phase))
        refuseInput('crewId', `${phase.name} has no crew in the plan; name the crew that does it.`);
      const commitmentIds = await writeCommitments(change, [{ phaseId: phase.id, crewId, ...dates }]);
      tell(change, phase, 'dates promised', dates);
      return { commitmentIds };
    });
  }

  /** Promises every phase of a job that has not begun and has no promise yet, as planned. */
  commitJob(ctx: Context, input: CommitJobInput) {
    return this.changes.run(ctx, { operation: 'commitJob', input }, async (change) => {
      const job = demandFound(
        await change.tx.job.findFirst({ where: companyRow(change, input.jobId) }),
        'job',
      );
      demandRevision(job, input.revision, 'job');
      if (job.state === 'done' || job.state === 'cancelled')
        throw new Refused(
          new WrongState(job.state, `Job ${job.number} is ${job.state}; there is nothing to promise.`),
        );
      const phases = await change.tx.phase.findMany({
        where: { jobId: job.id, state: 'waiting', commitments: { none: { state: 'held' } } },
        include: { planned: true },
        orderBy: [{ position: 'asc' }, { id: 'asc' }],
      });
      const promises = phases.flatMap(({ id, planned }) => (planned ? [promiseAsPlanned(id, planned)] : []));
      const homeless = phases.filter(({ planned }) => !planned).map(({ name }) => name);
      if (homeless.length > 0) throw new Refused(new WrongState('unplanned', noPlace(homeless.join(', '))));
      const commitmentIds = await writeCommitments(change, promises);
      change.record({
        action: 'job promised',
        subjectType: 'job',
        subjectId: job.id,
        jobId: job.id,
        detail: { phases: commitmentIds.length },
      });
      return { commitmentIds };
    });
  }

  /** Takes back the promise of a phase; the plan may then move it freely. */
  release(ctx: Context, input: ReleaseCommitmentInput) {
    return this.changes.run(ctx, { operation: 'releaseCommitment', input }, async (change) => {
      const phase = await demandPhase(change, input);
      const commitmentIds = await releaseHeld(change, [phase.id]);
      if (commitmentIds.length === 0)
        throw new Refused(
          new WrongState('none', `Nothing is promised for ${phase.name}; there is nothing to take back.`),
        );
      change.record({
        action: 'promise taken back',
        subjectType: 'phase',
        subjectId: phase.id,
        jobId: phase.jobId,
        detail: { phase: phase.name },
      });
      return { commitmentIds };
    });
  }
}

const needsCrew = ({ trade, durationMinutes }: Phase): boolean =>
  trade !== null && trade !== 'authority' && durationMinutes > 0;

const noPlace = (names: string): string =>
  `${names} has no place in the plan, so no dates can be promised. Look at the conflicts of the plan first.`;

function datesOf(change: Change, phase: Phase, planned: PlannedPhase | null, input: CommitPhaseInput) {
  const { startAt, finishAt } = input;
  if (!startAt && !finishAt) {
    if (!planned) throw new Refused(new WrongState('unplanned', noPlace(phase.name)));
    return { startAt: planned.startAt, finishAt: planned.finishAt };
  }
  if (!startAt || !finishAt)
    return refuseInput(
      startAt ? 'finishAt' : 'startAt',
      'is missing; give start and finish, or neither for the plan.',
    );
  demandPlannable(change, 'startAt', startAt);
  demandPlannable(change, 'finishAt', finishAt);
  if (finishAt < startAt) refuseInput('finishAt', 'lies before the start; give a later one.');
  return { startAt, finishAt };
}

function promiseAsPlanned(phaseId: string, { crewId, startAt, finishAt }: PlannedPhase): Promised {
  return { phaseId, crewId, startAt, finishAt };
}

function tell(change: Change, phase: Phase, action: string, dates: { startAt: Date; finishAt: Date }): void {
  change.record({
    action,
    subjectType: 'phase',
    subjectId: phase.id,
    jobId: phase.jobId,
    detail: {
      phase: phase.name,
      startAt: dates.startAt.toISOString(),
      finishAt: dates.finishAt.toISOString(),
    },
  });
}
