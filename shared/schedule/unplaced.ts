import type { Conflict, Reason } from './model.js';
import type { Outcome, Unplaced } from './outcome.js';
import type { Node } from './problem.js';
import type { NotFound } from './search.js';
import type { State } from './state.js';

/** Why a phase cannot be placed before any search is made; undefined when it may be searched. */
export function hopeless(state: State, node: Node): Unplaced | undefined {
  for (const { index, id } of node.prerequisites) {
    if (!state.outcomes[index]?.placed) return behind(id);
  }
  if (node.visits.length > 0 && node.visits.some((visit) => state.visitOf(visit).start === null))
    return behind(null);
  // A crew that is named is given; only a trade can be nobody's.
  if (node.needsCrew && node.crews.length === 0) {
    return because({ code: 'crewMissing', phaseId: node.id, trade: node.phase.trade! }, node);
  }
  if (node.needs.length === 0) return undefined;
  const small = node.needs.find(({ pool, quantity }) => quantity > pool.pool.quantity);
  if (small) {
    const { id: poolId, quantity } = small.pool.pool;
    return because(
      { code: 'poolTooSmall', phaseId: node.id, poolId, needed: small.quantity, quantity },
      node,
    );
  }
  return undefined;
}

/** A search came to the horizon's end. */
export function notFound(node: Node, { reason }: NotFound): Unplaced {
  const { duration } = node.phase;
  if (duration.kind === 'work' && duration.mode === 'continuous') {
    const longest = Math.max(...node.choices.map(({ hours }) => hours.own.longest));
    if (longest < node.length) {
      return because({ code: 'noStretch', phaseId: node.id, needed: node.length, longest }, node);
    }
  }
  return because({ code: 'beyondHorizon', phaseId: node.id, cause: reason }, node);
}

/** A phase on a cycle. */
export function onCycle(node: Node): Unplaced {
  return { placed: false, reason: { kind: 'unplanned', code: 'cycle', phaseId: node.id }, conflicts: [] };
}

/** The equipment it takes is out for good. */
export function neverFree(node: Node, cause: Reason): Unplaced {
  return because({ code: 'beyondHorizon', phaseId: node.id, cause }, node);
}

/** It would take equipment that no phase gives back; what went wrong on the way there is the cause. */
export function neverReleased(node: Node, releaser: Node, onTheWay: readonly Outcome[]): Unplaced {
  const roots = onTheWay.flatMap((outcome) => (outcome.placed ? [] : outcome.conflicts));
  const root = roots.find((conflict) => 'cause' in conflict);
  const failed =
    onTheWay.find((outcome) => !outcome.placed && outcome.conflicts.length > 0) ?? onTheWay.at(-1);
  const cause = root && 'cause' in root ? root.cause : failed!.reason;
  const reason = { kind: 'unplanned', code: 'releaseMissing', phaseId: releaser.id } as const;
  const conflict = { code: 'releaseMissing', phaseId: node.id, releasePhaseId: releaser.id, cause } as const;
  return { placed: false, reason, conflicts: [conflict] };
}

function behind(phaseId: string | null): Unplaced {
  return {
    placed: false,
    reason: { kind: 'unplanned', code: 'predecessorUnplanned', phaseId },
    conflicts: [],
  };
}

function because(conflict: Conflict, node: Node): Unplaced {
  return {
    placed: false,
    reason: { kind: 'unplanned', code: conflict.code, phaseId: node.id },
    conflicts: [conflict],
  };
}
