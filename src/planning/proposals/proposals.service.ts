import { Injectable } from '@nestjs/common';
import type { Proposal } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { releaseHeld, writeCommitments } from '../commitments/write-commitments.js';
import { readDifferences, type StoredDifference } from '../replan/stored-differences.js';
import type { AcceptProposalInput, DropProposalInput } from './proposal.inputs.js';
import { ProposalOutdated } from './proposal-outdated.js';

/** Decides proposals. The open one is always in step with the plan, so what is open can be decided. */
@Injectable()
export class ProposalsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Moves the commitments as the proposal says; of a phase that has no place in the plan the promise is taken back. */
  accept(ctx: Context, input: AcceptProposalInput) {
    return this.changes.run(ctx, { operation: 'acceptProposal', input }, async (change) => {
      const proposal = await demandOpen(change, input);
      const { phases } = readDifferences(proposal.differences);
      await releaseHeld(
        change,
        phases.map(({ phaseId }) => phaseId),
      );
      await writeCommitments(change, phases.flatMap(promiseOf));
      await decide(change, proposal, 'accepted');
      for (const jobId of [...new Set(phases.map((one) => one.jobId))].sort())
        change.record({
          action: 'promises moved',
          subjectType: 'job',
          subjectId: jobId,
          jobId,
          detail: { proposal: proposal.number, phases: phases.filter((one) => one.jobId === jobId).length },
        });
      return { proposalId: proposal.id };
    });
  }

  /** Keeps the commitments as they are. The same differences are not proposed again. */
  drop(ctx: Context, input: DropProposalInput) {
    return this.changes.run(ctx, { operation: 'dropProposal', input }, async (change) => {
      const proposal = await demandOpen(change, input);
      await decide(change, proposal, 'dropped');
      return { proposalId: proposal.id };
    });
  }
}

async function demandOpen(change: Change, input: AcceptProposalInput): Promise<Proposal> {
  const where = companyRow(change, input.proposalId);
  const proposal = demandFound(await change.tx.proposal.findFirst({ where }), 'proposal');
  if (proposal.state !== 'open') throw new Refused(new ProposalOutdated());
  demandRevision(proposal, input.revision, 'proposal');
  return proposal;
}

async function decide(change: Change, proposal: Proposal, state: 'accepted' | 'dropped'): Promise<void> {
  await change.tx.proposal.update({
    where: { id: proposal.id },
    data: {
      state,
      decidedAt: change.now,
      decidedById: change.ctx.personId || null,
      revision: { increment: 1 },
    },
  });
  if (proposal.improvementId)
    await change.tx.improvement.update({
      where: { id: proposal.improvementId },
      data: { state, revision: { increment: 1 } },
    });
  change.record({
    action: `proposal ${state}`,
    subjectType: 'proposal',
    subjectId: proposal.id,
    detail: { number: proposal.number },
  });
}

function promiseOf({ phaseId, crewAfterId, startAfter, finishAfter }: StoredDifference) {
  if (startAfter === null || finishAfter === null) return [];
  return [{ phaseId, crewId: crewAfterId, startAt: new Date(startAfter), finishAt: new Date(finishAfter) }];
}
