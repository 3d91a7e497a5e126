import type { Change } from '../../platform/change/change.js';
import { readRows } from '../gather/read-rows.js';
import type { PlanningRows } from '../gather/rows.js';
import { acceptedOrder, noteApplied } from '../improve/accepted-order.js';
import { offerImproved } from '../improve/offer-improved.js';
import { offerMove } from '../moves/offer-move.js';
import { computePlan } from './compute-plan.js';
import { differencesOf } from './differences.js';
import { planRows } from './plan-rows.js';
import { propose } from './propose.js';
import { settleCommitments } from './settle-commitments.js';
import { noteAcceptedPlan, rankedRows } from './stand-before.js';
import { causeOf, type WrittenPlan, writePlan } from './write-plan.js';

/**
 * Plans the whole company anew inside a change: settles the promises of what has ended, computes the plan from the rows as they now stand, writes
 * what moved, and opens, keeps or closes the proposal that compares it with the promises. The order of an improved plan that the office has
 * just accepted is planned by once; afterwards the dates themselves keep it.
 */
export async function replan(change: Change): Promise<void> {
  const cause = causeOf(change);
  await settleCommitments(change);
  const rows = await readRows(change);
  const accepted = await acceptedOrder(change);
  const computed = computePlan(rankedRows(change, rows), change.now.getTime(), accepted?.order);
  const next = planRows(computed, rows);
  const written = await writePlan(change, rows, next, computed);
  recordMoves(change, rows, written);
  if (accepted) await noteApplied(change, accepted.id, written.planNumber);
  await noteAcceptedPlan(change, written.planNumber);
  await propose(change, differencesOf(rows, next), written.planNumber, cause);
  const inForce = { rows, computed, next, planNumber: written.planNumber };
  await offerImproved(change, inForce);
  await offerMove(change, inForce);
}

/** Tells the journal, and by it everyone who watches, which jobs moved. */
function recordMoves(change: Change, rows: PlanningRows, { planNumber, moved }: WrittenPlan): void {
  const counts = new Map<string, number>();
  for (const { id, jobId } of rows.phases) if (moved.has(id)) counts.set(jobId, (counts.get(jobId) ?? 0) + 1);
  for (const [jobId, phases] of [...counts].sort(([a], [b]) => (a < b ? -1 : 1)))
    change.record({
      action: 'plan moved',
      subjectType: 'job',
      subjectId: jobId,
      jobId,
      detail: { planNumber, phases },
    });
}
