import { Injectable } from '@nestjs/common';
import type { Prisma, Proposal, ProposedMove } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { releaseHeld, writeCommitments } from '../commitments/write-commitments.js';
import { standBefore, type StoodAt } from '../replan/stand-before.js';
import { readDifferences, type StoredDifference } from '../replan/stored-differences.js';
import { type FormerState, formerState } from './former-state.js';
import type { AcceptProposalInput, DropProposalInput, UndoProposalInput } from './proposal.inputs.js';
import { ProposalOutdated } from './proposal-outdated.js';
import { undoAcceptance } from './undo-proposal.js';

/** Decides proposals. The open one is always in step with the plan, so what is open can be decided. */
@Injectable()
export class ProposalsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Moves the commitments as the proposal says; of a phase that has no place in the plan the promise is taken back. */
  accept(ctx: Context, input: AcceptProposalInput) {
    return this.changes.run(ctx, { operation: 'acceptProposal', input }, async (change) => {
      const proposal = await demandOpen(change, input);
      const differences = readDifferences(proposal.differences);
      const { phases } = differences;
      const move = await moveOf(change, proposal);
      const former = proposal.improvementId ? null : await formerState(change, differences, move);
      if (move) await setMove(change, move);
      await releaseHeld(
        change,
        phases.map(({ phaseId }) => phaseId),
      );
      await writeCommitments(change, phases.flatMap(promiseOf));
      await decide(change, proposal, 'accepted', former);
      standBefore(change, await placeOf(change, move), proposal.id);
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

  /** Takes an acceptance back, while nothing else has changed since. */
  undo(ctx: Context, input: UndoProposalInput) {
    return this.changes.run(ctx, { operation: 'undoProposal', input }, async (change) => {
      const proposal = await demandProposal(change, input);
      const { promised } = await undoAcceptance(change, proposal);
      await decide(change, proposal, 'undone');
      const { phases } = readDifferences(proposal.differences);
      for (const jobId of [...new Set(phases.map((one) => one.jobId))].sort())
        change.record({
          action: 'promises moved back',
          subjectType: 'job',
          subjectId: jobId,
          jobId,
          detail: { proposal: proposal.number, phases: promised.length },
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

/** The move that a proposal offers; null for every other proposal. */
async function moveOf({ tx }: Change, { moveId }: Proposal): Promise<ProposedMove | null> {
  return moveId ? tx.proposedMove.findUniqueOrThrow({ where: { id: moveId } }) : null;
}

/** Sets for the phase what the move asked for. A start fixed before, or an earliest one, gives way to it. */
async function setMove({ tx }: Change, { phaseId, way, startAt, crewId }: ProposedMove): Promise<void> {
  await tx.phase.update({
    where: { id: phaseId },
    data: {
      pinnedStart: way === 'fixed' ? startAt : null,
      notBefore: way === 'notBefore' ? startAt : null,
      ...(crewId ? { requiredCrewId: crewId } : {}),
      revision: { increment: 1 },
    },
  });
}

async function demandProposal(change: Change, input: UndoProposalInput): Promise<Proposal> {
  const where = companyRow(change, input.proposalId);
  const proposal = demandFound(await change.tx.proposal.findFirst({ where }), 'proposal');
  demandRevision(proposal, input.revision, 'proposal');
  return proposal;
}

async function demandOpen(change: Change, input: AcceptProposalInput): Promise<Proposal> {
  const proposal = await demandProposal(change, { ...input, revision: null });
  if (proposal.state !== 'open') throw new Refused(new ProposalOutdated());
  demandRevision(proposal, input.revision, 'proposal');
  return proposal;
}

async function decide(
  change: Change,
  proposal: Proposal,
  state: 'accepted' | 'dropped' | 'undone',
  former: FormerState | null = null,
): Promise<void> {
  await change.tx.proposal.update({
    where: { id: proposal.id },
    data: {
      state,
      decidedAt: change.now,
      decidedById: change.ctx.personId || null,
      ...(former ? { former: former as unknown as Prisma.InputJsonObject } : {}),
      revision: { increment: 1 },
    },
  });
  if (proposal.moveId)
    await change.tx.proposedMove.update({
      where: { id: proposal.moveId },
      data: { state, endedAt: change.now, revision: { increment: 1 } },
    });
  if (proposal.improvementId && state !== 'undone')
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

/** Where the phase of a move is ranked by the plan that follows: where the proposal has it ranked. */
async function placeOf({ tx }: Change, move: ProposedMove | null): Promise<StoodAt[]> {
  if (!move || move.way === 'fixed') return [];
  const { phaseId, startAt } = move;
  const planned = await tx.plannedPhase.findUnique({ where: { phaseId } });
  return [{ phaseId, startAt, crewId: move.crewId ?? planned?.crewId ?? null }];
}
