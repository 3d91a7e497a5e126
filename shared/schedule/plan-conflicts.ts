import { isUndated } from './lower-bounds.js';
import { hasStarted } from './dependencies.js';
import type { Conflict, PlannedJob } from './model.js';
import type { Node } from './problem.js';
import { isFrozen } from './rank.js';
import type { State } from './state.js';
import { slot } from './slot.js';

/** Conflicts that show only once everything has its place. */
export function lateConflicts(state: State, jobs: readonly PlannedJob[]): Conflict[] {
  return [
    ...state.problem.nodes.flatMap((node) => gateConflicts(state, node)),
    ...state.problem.nodes.flatMap((node) => lostCommitment(state, node)),
    ...state.problem.visits.flatMap((visit) => state.visitOf(visit).conflicts),
    ...jobs.flatMap((job) => dueConflicts(job)),
    ...state.problem.input.pools.flatMap((pool) => overdrawn(state, pool.id)),
  ];
}

/** A fixed order, and each conflict once. */
export function orderConflicts(conflicts: readonly Conflict[]): Conflict[] {
  const byText = new Map(conflicts.map((conflict) => [JSON.stringify(conflict), conflict]));
  return [...byText].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, conflict]) => conflict);
}

function gateConflicts(state: State, node: Node): Conflict[] {
  const outcome = state.outcomes[node.index];
  if (!outcome?.placed || hasStarted(node)) return [];
  const { start } = outcome;
  const phaseId = node.id;
  return (node.phase.gates ?? []).flatMap((gate) => {
    const conflicts: Conflict[] = [];
    if (gate.kind === 'clearance' && gate.expires !== undefined && start >= gate.expires) {
      const { id: clearanceId, expires } = gate;
      conflicts.push({ code: 'clearanceLapsed', phaseId, clearanceId, expires, start });
    }
    if (isUndated(gate)) conflicts.push({ code: 'gateUndated', phaseId, gateId: gate.id });
    return conflicts;
  });
}

/** A frozen commitment whose phase has no place at all. */
function lostCommitment(state: State, node: Node): Conflict[] {
  const outcome = state.outcomes[node.index];
  const { commitment } = node.phase;
  if (!commitment || outcome?.placed !== false || !isFrozen(node, state.problem.input)) return [];
  const { reason: cause } = outcome;
  return [{ code: 'commitmentBroken', phaseId: node.id, committed: commitment.start, start: null, cause }];
}

function dueConflicts({ id, due, finish }: PlannedJob): Conflict[] {
  return due !== null && finish !== null && finish > due
    ? [{ code: 'dueMissed', jobId: id, due, finish }]
    : [];
}

/** Only started work can have taken more than there is. */
function overdrawn(state: State, poolId: string): Conflict[] {
  const loans = state.stock.loansOf(poolId);
  const conflicts: Conflict[] = [];
  for (const { from, to } of state.stock.overdrawn(poolId)) {
    const out = loans.filter((loan) => loan.from < to && loan.to > from);
    conflicts.push({
      code: 'poolOverdrawn',
      poolId,
      phaseIds: [...new Set(out.map((loan) => loan.node.id))].sort(),
      from: slot(from),
      to: slot(Math.min(to, state.problem.end)),
    });
  }
  return conflicts;
}
