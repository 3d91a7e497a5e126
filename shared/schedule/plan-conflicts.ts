import { isUndated } from './lower-bounds.js';
import type { Conflict, PlannedJob } from './model.js';
import { overrun } from './greatest-lag.js';
import type { CompiledPool, Edge, Node } from './problem.js';
import type { State } from './state.js';
import { slot } from './slot.js';

/** Conflicts that show only once everything has its place. */
export function lateConflicts(state: State, jobs: readonly PlannedJob[]): Conflict[] {
  return [
    ...state.problem.watched.flatMap((node) => [
      ...gateConflicts(state, node),
      ...lostCommitment(state, node),
      ...node.mosts.flatMap((edge) => exceeded(state, edge)),
    ]),
    ...state.problem.visits.flatMap((visit) => state.visitOf(visit).conflicts),
    ...jobs.flatMap((job) => dueConflicts(job)),
    ...state.problem.pools.flatMap((pool) => overdrawn(state, pool)),
  ];
}

/** A greatest lag that is not kept, with the circle that it closes. */
function exceeded(state: State, edge: Edge): Conflict[] {
  const [from, to] = [state.outcomes[edge.from.index], state.outcomes[edge.to.index]];
  if (!from?.placed || !to?.placed || to.state === 'done') return [];
  const over = overrun(edge, from, to);
  if (!over) return [];
  const phaseIds = wayBetween(edge.from, edge.to).map(({ id }) => id);
  return [{ code: 'lagExceeded', linkId: edge.link.id, by: over.by, phaseIds, cause: to.reason }];
}

/** The shortest way from a phase to one that follows it; only the two where nothing else joins them. */
function wayBetween(from: Node, to: Node): Node[] {
  const cameFrom = new Map<Node, Node>();
  const queue = from.dependents.filter((node) => node !== to);
  for (const node of queue) cameFrom.set(node, from);
  for (let node = queue.shift(); node && !cameFrom.has(to); node = queue.shift()) {
    for (const after of node.dependents) {
      if (cameFrom.has(after) || after === from) continue;
      cameFrom.set(after, node);
      queue.push(after);
    }
  }
  const way = [to];
  for (let at = cameFrom.get(to); at && at !== from; at = cameFrom.get(at)) way.unshift(at);
  return [from, ...way];
}

/** A fixed order, and each conflict once. */
export function orderConflicts(conflicts: readonly Conflict[]): Conflict[] {
  const byText = new Map(conflicts.map((conflict) => [JSON.stringify(conflict), conflict]));
  return [...byText].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, conflict]) => conflict);
}

function gateConflicts(state: State, node: Node): Conflict[] {
  const outcome = state.outcomes[node.index];
  if (!outcome?.placed || node.started) return [];
  const { start } = outcome;
  const phaseId = node.id;
  return (node.phase.gates ?? []).flatMap((gate) => {
    const conflicts: Conflict[] = [];
    if (gate.kind === 'clearance' && gate.expires !== undefined && start >= gate.expires) {
      const { id: clearanceId, expires } = gate;
      conflicts.push({ code: 'clearanceLapsed', phaseId, clearanceId, expires, start });
    }
    if (gate.kind === 'inspection') {
      const visit = node.visits.find(({ inspection }) => inspection.id === gate.inspectionId)!;
      const { validFor, id: inspectionId } = visit.inspection;
      const { finish } = state.visitOf(visit);
      const expires = finish === null || validFor === undefined ? null : slot(finish + validFor);
      if (expires !== null && start > expires) {
        conflicts.push({ code: 'inspectionLapsed', phaseId, inspectionId, expires, start });
      }
    }
    if (isUndated(gate)) conflicts.push({ code: 'gateUndated', phaseId, gateId: gate.id });
    return conflicts;
  });
}

/** A frozen commitment whose phase has no place at all. */
function lostCommitment(state: State, node: Node): Conflict[] {
  const outcome = state.outcomes[node.index];
  const { commitment } = node.phase;
  if (!commitment || outcome?.placed !== false || !node.frozen) return [];
  const { reason: cause } = outcome;
  return [{ code: 'commitmentBroken', phaseId: node.id, committed: commitment.start, start: null, cause }];
}

function dueConflicts({ id, due, finish }: PlannedJob): Conflict[] {
  return due !== null && finish !== null && finish > due
    ? [{ code: 'dueMissed', jobId: id, due, finish }]
    : [];
}

/** Only started work can have taken more than there is. */
function overdrawn(state: State, pool: CompiledPool): Conflict[] {
  const loans = state.stock.loansOf(pool);
  const conflicts: Conflict[] = [];
  for (const { from, to } of state.stock.overdrawn(pool)) {
    const out = loans.filter((loan) => loan.from < to && loan.to > from);
    conflicts.push({
      code: 'poolOverdrawn',
      poolId: pool.pool.id,
      phaseIds: [...new Set(out.map((loan) => loan.node.id))].sort(),
      from: slot(from),
      to: slot(Math.min(to, state.problem.end)),
    });
  }
  return conflicts;
}
