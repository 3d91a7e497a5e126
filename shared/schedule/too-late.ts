import { overrun, startForPoint } from './greatest-lag.js';
import type { Bound } from './lower-bounds.js';
import type { Reason } from './model.js';
import type { Outcome, Placement } from './outcome.js';
import type { Edge } from './problem.js';
import type { State } from './state.js';

/** A link whose greatest lag is overrun, and the start of its predecessor that would do; null when no later start can help. */
export interface Late {
  readonly edge: Edge;
  readonly floor: Bound | null;
}

/** Whether a phase that must follow soon comes too late; both have their places. */
export function tooLate(state: State, edge: Edge): Late | undefined {
  const node = edge.from;
  const from = state.outcomes[node.index];
  const to = state.outcomes[edge.to.index];
  const over = from?.placed && to?.placed ? overrun(edge, from, to) : undefined;
  if (!over || !from?.placed || !to?.placed) return undefined;
  const at = over.wanted === null ? null : startForPoint(edge, from, over.wanted);
  if (node.pinned || node.frozen || at === null || at <= from.start) return { edge, floor: null };
  const cause = causeOfLateness(to, from, (id) => state.outcomes[state.problem.node(id).index]);
  const reason = { kind: 'mostLag', linkId: edge.link.id, phaseId: edge.to.id, until: at, cause } as const;
  return { edge, floor: { at, reason } };
}

/**
 * What kept a successor from coming sooner. Links lead back to what they follow; where that is the predecessor itself, its hours are to
 * blame, or those of what runs between.
 */
function causeOfLateness(
  to: Placement,
  from: Placement,
  outcomeOf: (id: string) => Outcome | undefined,
): Reason {
  let at = to;
  for (let { reason } = at; reason.kind === 'link'; { reason } = at) {
    const [last] = at.trail.slice(-1);
    if (last) return last.reason;
    const before = outcomeOf(reason.phaseId);
    if (!before?.placed || before === from) break;
    at = before;
  }
  const { reason, hours, finish } = at;
  return reason.kind === 'link' ? { kind: 'calendar', calendarId: hours.calendarId, until: finish } : reason;
}
