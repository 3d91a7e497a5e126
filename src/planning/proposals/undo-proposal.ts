import type { Proposal } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { releaseHeld, writeCommitments } from '../commitments/write-commitments.js';
import { readDifferences } from '../replan/stored-differences.js';
import { standBefore } from '../replan/stand-before.js';
import { type FormerState, readFormer, stoodAt } from './former-state.js';
import { UndoRefused } from './undo-refused.js';

/**
 * Takes an acceptance back while nothing else has changed since: what the office had set is set again, and the former dates are promised anew, so that
 * everybody who was told of the move is told of its end. Nothing is struck from the record.
 *
 * @throws Refused with UndoRefused, or CrewBusy when a former promise is no longer free.
 */
export async function undoAcceptance(change: Change, proposal: Proposal): Promise<FormerState> {
  const former = await demandUndoable(change, proposal);
  const { phase, promises, promised } = former;
  if (phase) {
    await change.tx.phase.update({
      where: { id: phase.id },
      data: {
        notBefore: phase.notBefore,
        pinnedStart: phase.pinnedStart,
        requiredCrewId: phase.requiredCrewId,
        revision: { increment: 1 },
      },
    });
  }
  await releaseHeld(change, promised);
  await writeCommitments(
    change,
    promises.map(({ phaseId, crewId, startAt, finishAt }) => ({
      phaseId,
      crewId,
      startAt: new Date(startAt),
      finishAt: new Date(finishAt),
    })),
  );
  standBefore(change, stoodAt(former));
  return former;
}

async function demandUndoable({ tx, ctx, now }: Change, proposal: Proposal): Promise<FormerState> {
  const refuse = (message: string): never => {
    throw new Refused(new UndoRefused(message));
  };
  const { companyId } = ctx;
  const former = readFormer(proposal.former);
  const { decidedAt } = proposal;
  if (proposal.state !== 'accepted' || !former || !decidedAt)
    return refuse(
      'Only a move, or what followed the plan in force, can be undone, and only while it is accepted. Try another move instead.',
    );
  const { planNumber } = await tx.company.findUniqueOrThrow({ where: { id: companyId } });
  const promisedSince = await tx.commitment.count({
    where: { companyId, madeAt: { gt: decidedAt } },
  });
  if (planNumber !== proposal.acceptedPlan || promisedSince > 0)
    return refuse('The plan or its promises have gone on since. Try another move instead.');
  const begun = await tx.phase.count({
    where: { companyId, id: { in: [...former.promised] }, actualStart: { gt: decidedAt } },
  });
  if (begun > 0) return refuse('A phase that it moved has begun since. Try another move instead.');
  // What was overdue when it gave way was no more than that.
  const passed = (startAt: string) => new Date(startAt) < now && new Date(startAt) >= decidedAt;
  if (former.promises.some(({ startAt }) => passed(startAt)))
    return refuse('A start that was promised before has passed since. Promise or try a later one instead.');
  const stands = await tx.commitment.count({
    where: { companyId, state: 'held', phaseId: { in: [...former.promised] }, madeAt: decidedAt },
  });
  if (stands < former.promised.length - withoutPlace(proposal))
    return refuse('A promise that it made has been taken back since. Try another move instead.');
  return former;
}

/** Promises that the acceptance took back, because the plan had no place for them. */
function withoutPlace({ differences }: Proposal): number {
  return readDifferences(differences).phases.filter(({ startAfter }) => startAfter === null).length;
}
