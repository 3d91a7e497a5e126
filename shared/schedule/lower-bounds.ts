import { compareIds } from './by-id.js';
import { fromFinish, lagAfter, startForFinish, toFinish } from './link-lag.js';
import type { ClearanceGate, CureGate, Gate, Reason } from './model.js';
import type { Outcome, Placement } from './outcome.js';
import type { Edge, Hours, Node } from './problem.js';
import type { Slot } from './slot.js';
import type { VisitOutcome } from './visits.js';

/** An earliest start and what asks for it. */
export interface Bound {
  readonly at: Slot;
  readonly reason: Reason;
}

/**
 * When links (and the present) let a phase start, given the hours it would run in; null when a lag outruns the calendar. Asked only of a
 * phase that has not begun and whose predecessors all have their place.
 */
export function readyBound(
  node: Node,
  hours: Hours,
  outcomes: readonly (Outcome | undefined)[],
  now: Slot,
): Bound | null {
  let best = now;
  let by: Edge | undefined;
  for (const edge of node.ins) {
    const at = linkBound(edge, node, hours, outcomes[edge.from.index] as Placement);
    if (at === null) return null;
    if (at > best || (at === best && !by)) {
      best = at;
      by = edge;
    }
  }
  return { at: best, reason: by ? by.reason : NOW };
}

/** Earliest start by one link whose predecessor has its place; null when its lag outruns the calendar. */
export function linkBound({ link }: Edge, node: Node, hours: Hours, from: Placement): Slot | null {
  const anchor = lagAfter(link, fromFinish(link.kind) ? from.finish : from.start, hours.own);
  return anchor !== null && toFinish(link.kind) ? startForFinish(node, hours, anchor) : anchor;
}

const NOW: Reason = { kind: 'now' };

/** What gates ask for, earliest first; every visit among them has its place. */
export function gateBounds(gates: readonly Gate[], visitOf: (id: string) => VisitOutcome): Bound[] {
  const bounds = gates.map((gate) => gateBound(gate, visitOf));
  return bounds
    .filter((bound) => bound !== null)
    .sort((a, b) => a.at - b.at || compareIds(JSON.stringify(a.reason), JSON.stringify(b.reason)));
}

function gateBound(gate: Gate, visitOf: (id: string) => VisitOutcome): Bound | null {
  switch (gate.kind) {
    case 'clearance':
      return gate.earliest === null
        ? null
        : { at: gate.earliest, reason: { kind: 'clearance', id: gate.id, at: gate.earliest } };
    case 'cure':
      return gate.expected === null
        ? null
        : {
            at: gate.expected,
            reason: {
              kind: 'cure',
              id: gate.id,
              at: gate.expected,
              strengthNow: gate.strengthNow ?? null,
              strengthNeeded: gate.strengthNeeded ?? null,
            },
          };
    case 'notBefore':
      return {
        at: gate.at,
        reason: { kind: 'notBefore', id: gate.id, cause: gate.cause, at: gate.at },
      };
    case 'inspection': {
      const finish = visitOf(gate.inspectionId).finish!;
      return { at: finish, reason: { kind: 'inspection', inspectionId: gate.inspectionId, until: finish } };
    }
  }
}

/** Whether nobody can say yet when a gate will be reached: the plan then assumes it. */
export function isUndated(gate: Gate): gate is ClearanceGate | CureGate {
  return (
    (gate.kind === 'clearance' && gate.earliest === null) || (gate.kind === 'cure' && gate.expected === null)
  );
}
