import type { CrewTimeline } from './crew-timeline.js';
import { fitHours } from './fit-hours.js';
import type { Bound } from './lower-bounds.js';
import type { Crew, PlanInput, Reason, TrailStep } from './model.js';
import { bindingReason } from './outcome.js';
import type { Hours, Node } from './problem.js';
import { aheadOf } from './rank.js';
import { slot, type Slot } from './slot.js';
import type { Stock } from './stock.js';

/** What a search for one phase with one crew looks at. */
export interface SearchContext {
  readonly node: Node;
  readonly crew: Crew | null;
  readonly hours: Hours;
  readonly ready: Bound;
  /** Earliest starts besides links, in the order in which they are waited for. */
  readonly floors: readonly Bound[];
  readonly timeline: CrewTimeline | null;
  readonly stock: Stock;
  readonly nodes: readonly Node[];
  readonly input: PlanInput;
  readonly horizon: Slot;
  /** A later start is of no use: another crew has an earlier one. */
  readonly latest: number;
}

/** The earliest place with one crew. */
export interface Found {
  readonly found: true;
  readonly crew: Crew | null;
  readonly hours: Hours;
  readonly start: Slot;
  readonly finish: Slot;
  readonly ready: Slot;
  readonly readyReason: Reason;
  readonly trail: readonly TrailStep[];
  readonly reason: Reason;
}

/** No place inside the horizon, and the wait that never ends. */
export interface NotFound {
  readonly found: false;
  readonly reason: Reason;
  /** Pool that never has enough again. */
  readonly poolId: string | null;
}

/**
 * Finds the earliest start at or after all bounds at which hours, weather, crew and equipment agree. Each obstacle pushes the start to the
 * first instant at which that obstacle is gone, which no earlier start could have survived; so the result is the earliest, and the
 * pushes in order are the trail.
 */
export function findEarliest(context: SearchContext): Found | NotFound {
  const { node, crew, hours, ready, timeline, stock, horizon } = context;
  const need = { slots: node.length, working: node.phase.duration.kind === 'work' };
  const trail: TrailStep[] = [];
  let at = ready.at;
  const push = (to: Slot, reason: Reason): void => {
    const last = trail[trail.length - 1];
    if (last && reason.kind === 'calendar' && last.reason.kind === 'calendar') {
      trail[trail.length - 1] = { from: last.from, to, reason };
    } else {
      trail.push({ from: at, to, reason });
    }
    at = to;
  };
  for (const floor of context.floors) if (floor.at > at) push(floor.at, floor.reason);
  for (;;) {
    const fit = fitHours(node, hours, at, horizon);
    if (!fit.fits) {
      if (fit.to === null) return { found: false, reason: fit.reason, poolId: null };
      push(fit.to, fit.reason);
      continue;
    }
    const { finish } = fit;
    if (finish > horizon) {
      return { found: false, reason: bindingReason(ready.reason, trail), poolId: null };
    }
    if (at > context.latest) return { found: false, reason: ready.reason, poolId: null };
    const busy = timeline?.blockedUntil(at, finish, need);
    if (busy) {
      const owner = context.nodes[busy.owner]!;
      const ahead = aheadOf(owner, node, context.input);
      push(busy.to, { kind: 'crew', crewId: crew!.id, phaseId: owner.id, until: busy.to, ahead });
      continue;
    }
    const short = stock.shortFor(node.phase, at, finish);
    if (short) {
      const reason = stock.blame(short.poolId, short, node);
      if (short.to === Infinity) return { found: false, reason, poolId: short.poolId };
      push(slot(short.to), reason);
      continue;
    }
    const reason = bindingReason(ready.reason, trail);
    const { at: readyAt, reason: readyReason } = ready;
    return { found: true, crew, hours, start: at, finish, ready: readyAt, readyReason, trail, reason };
  }
}
