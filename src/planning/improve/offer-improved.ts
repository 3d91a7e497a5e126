import { objectiveOf } from '../../../shared/schedule/improve/objective.js';
import { Pass } from '../../../shared/schedule/pass.js';
import type { Improvement, Prisma } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { fingerprint } from '../../platform/change/fingerprint.js';
import type { PlanningRows } from '../gather/rows.js';
import type { ComputedPlan } from '../replan/compute-plan.js';
import { differencesOf, sameDifferences } from '../replan/differences.js';
import { type PlanRows, planRows } from '../replan/plan-rows.js';
import { openProposal, supersede } from '../replan/propose.js';
import { readDifferences } from '../replan/stored-differences.js';
import { improvableInput } from './improvable-input.js';
import { improvedEnds, improvedMoves } from './improved-moves.js';
import { readOrder, readOutcome, readWeights, type StoredOutcome } from './stored-outcome.js';

/** Costs closer together than this are the same: sums of weighted parts. */
const SAME = 1e-6;

/** The plan in force, as it has just been written. */
export interface InForce {
  readonly rows: PlanningRows;
  readonly computed: ComputedPlan;
  readonly next: PlanRows;
  readonly planNumber: number;
}

/**
 * Keeps the proposal of an improved plan in step with the facts: its order is planned anew on the rows as they now stand. While it is better than
 * the plan in force it is offered; when it says otherwise than before the proposal is replaced; when it is no longer better it ends.
 */
export async function offerImproved(change: Change, inForce: InForce): Promise<void> {
  const { tx, ctx } = change;
  const { companyId } = ctx;
  const [run, ...older] = await tx.improvement.findMany({
    where: { companyId, state: 'offered' },
    orderBy: [{ endedAt: 'desc' }, { id: 'desc' }],
  });
  const open = await tx.proposal.findFirst({
    where: { companyId, state: 'open', improvementId: { not: null } },
  });
  for (const { id } of older) await end(change, id, 'outdated', 'A later search has found a better plan.');
  const order = run && readOrder(run.order);
  if (!run || !order) {
    if (open) await supersede(change, open);
    return;
  }
  const { outcome, differences } = lookAgain(run, order, inForce);
  const better = (outcome.after?.total ?? 0) < (outcome.before?.total ?? 0) - SAME;
  await tx.improvement.update({
    where: { id: run.id },
    data: { outcome: outcome as unknown as Prisma.InputJsonObject },
  });
  if (
    better &&
    open?.improvementId === run.id &&
    sameDifferences(readDifferences(open.differences), differences)
  )
    return;
  if (open) await supersede(change, open);
  if (!better) {
    const wasOffered = (await tx.proposal.count({ where: { improvementId: run.id } })) > 0;
    return wasOffered
      ? end(
          change,
          run.id,
          'outdated',
          'Facts have moved, and its plan is no longer better than the one in force.',
        )
      : end(change, run.id, 'unchanged', 'It found no plan that is better than the one in force.');
  }
  const cause = `a search that made ${run.schedules} plans`;
  const { planNumber } = inForce;
  await openProposal(change, { differences, planNumber, cause, improvementId: run.id, moveId: null });
}

/** The improved order on the facts as they stand, against the plan in force. */
function lookAgain(run: Improvement, order: readonly string[], { rows, computed, next }: InForce) {
  const input = improvableInput(computed.planned);
  const weights = readWeights(run.weights);
  const planned = { ...input, order };
  const pass = new Pass(planned);
  const improved = { ...computed, planned, plan: pass.plan, pass };
  const found = planRows(improved, rows);
  const said = readOutcome(run.outcome);
  const factsMoved = fingerprint(input) !== run.inputHash;
  const outcome: StoredOutcome = {
    before: objectiveOf(input, computed.plan, weights),
    after: objectiveOf(input, improved.plan, weights),
    withinPercent: factsMoved ? null : (said?.withinPercent ?? null),
    proved: !factsMoved && (said?.proved ?? false),
    factsMoved,
  };
  const differences = {
    ...differencesOf(rows, found),
    moves: improvedMoves(rows, next, found),
    ends: improvedEnds(rows, next, found),
  };
  return { outcome, differences };
}

async function end(
  change: Change,
  id: string,
  state: 'outdated' | 'unchanged',
  message: string,
): Promise<void> {
  await change.tx.improvement.update({
    where: { id },
    data: { state, message, revision: { increment: 1 } },
  });
  change.record({ action: `better plan ${state}`, subjectType: 'improvement', subjectId: id });
}
