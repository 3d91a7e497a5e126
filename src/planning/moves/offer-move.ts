import { applyChanges } from '../../../shared/schedule/change.js';
import { Pass } from '../../../shared/schedule/pass.js';
import { shiftsBetween } from '../../../shared/schedule/what-if/what-if.js';
import { moveChanges } from '../../../shared/moves/move-phase.js';
import type { Phase, ProposedMove } from '../../generated/prisma/client.js';
import { localTime } from '../../platform/local-time.js';
import type { Change } from '../../platform/change/change.js';
import type { InForce } from '../improve/offer-improved.js';
import { improvedEnds, improvedMoves } from '../improve/improved-moves.js';
import { differencesOf, sameDifferences } from '../replan/differences.js';
import { planRows } from '../replan/plan-rows.js';
import { openProposal, supersede } from '../replan/propose.js';
import { readDifferences, type StoredDifferences } from '../replan/stored-differences.js';

/**
 * Keeps the proposal of a tried move in step with the facts: the move is planned anew on the rows as they now stand. While it moves something it is
 * offered; when it says otherwise than before the proposal is replaced; when it can no longer be made it ends.
 */
export async function offerMove(change: Change, inForce: InForce): Promise<void> {
  const { tx, ctx } = change;
  const { companyId } = ctx;
  const move = await tx.proposedMove.findFirst({
    where: { companyId, state: 'offered' },
    include: { phase: true },
  });
  const open = await tx.proposal.findFirst({ where: { companyId, state: 'open', moveId: { not: null } } });
  if (!move) {
    if (open) await supersede(change, open);
    return;
  }
  const impossible = whyImpossible(change, move, inForce);
  const differences = impossible ? null : whatMoves(move, inForce);
  const known = open?.moveId === move.id;
  if (differences && known && sameDifferences(readDifferences(open.differences), differences)) return;
  if (open) await supersede(change, open);
  if (!differences) {
    const still = `${move.phase.name} stays where it is: what binds it there is stronger, or it starts no earlier than that already.`;
    return end(change, move, known || impossible ? 'outdated' : 'unchanged', impossible ?? still);
  }
  const cause = causeOf(move, inForce);
  await openProposal(change, {
    differences,
    planNumber: inForce.planNumber,
    cause,
    improvementId: null,
    moveId: move.id,
  });
}

type MoveOfPhase = ProposedMove & { readonly phase: Phase };

function whyImpossible({ now }: Change, { phase, startAt }: MoveOfPhase, { computed }: InForce) {
  if (phase.state !== 'waiting') return `${phase.name} is ${phase.state}: it can no longer be moved.`;
  if (startAt < now) return 'The start that was tried has passed. Try another one.';
  if (!computed.planned.phases.some(({ id }) => id === phase.id))
    return `${phase.name} is no longer planned: its job is finished or called off.`;
  return null;
}

/** What the move changes against what was promised and against the plan in force; null when nothing moves. */
function whatMoves(move: MoveOfPhase, { rows, computed, next }: InForce): StoredDifferences | null {
  const { phaseId, way, startAt, crewId } = move;
  const at = computed.frame.at(startAt);
  const changes = moveChanges(computed.planned, { phaseId, way, at, crewId: crewId ?? undefined });
  const planned = applyChanges(computed.planned, changes);
  const pass = new Pass(planned);
  const shifts = shiftsBetween(computed.plan, pass.plan);
  if (way === 'notBefore' && shifts.phases.length === 0) return null;
  const found = planRows({ ...computed, planned, plan: pass.plan, pass }, rows);
  return {
    ...differencesOf(rows, found),
    moves: improvedMoves(rows, next, found),
    ends: improvedEnds(rows, next, found),
  };
}

function causeOf({ phase, way, startAt }: MoveOfPhase, { rows }: InForce): string {
  const job = rows.jobs.find(({ id }) => id === phase.jobId);
  const when = localTime(startAt, job?.site.zone ?? rows.company.zone);
  return `trying ${job ? `${job.number} ` : ''}${phase.name} ${way === 'fixed' ? 'fixed at' : 'no earlier than'} ${when}`;
}

async function end(
  change: Change,
  move: MoveOfPhase,
  state: 'outdated' | 'unchanged',
  message: string,
): Promise<void> {
  await change.tx.proposedMove.update({
    where: { id: move.id },
    data: { state, message, endedAt: change.now, revision: { increment: 1 } },
  });
  change.record({ action: `move ${state}`, subjectType: 'phase', subjectId: move.phaseId });
}
