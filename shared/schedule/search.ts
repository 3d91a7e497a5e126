import { fitHours } from './fit-hours.js';
import type { Bound } from './lower-bounds.js';
import type { Crew, Reason, TrailStep } from './model.js';
import { bindingReason } from './outcome.js';
import type { Choice, CompiledPool, Hours, Node } from './problem.js';
import { aheadOf } from './rank.js';
import { slot, type Slot } from './slot.js';
import { letsCrewGo, type State } from './state.js';

/** The earliest place with one crew. */
export interface Found {
  readonly found: true;
  readonly crew: Crew | null;
  readonly crewIndex: number;
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
  readonly pool: CompiledPool | null;
}

/**
 * Finds the earliest start at or after all bounds at which hours, weather, crew and equipment agree. Each obstacle pushes the start to the
 * first instant at which that obstacle is gone, which no earlier start could have survived; so the result is the earliest, and the
 * pushes in order are the trail.
 *
 * @param floors earliest starts besides links, in the order in which they are waited for
 */
export function findEarliest(
  state: State,
  node: Node,
  choice: Choice,
  ready: Bound,
  floors: readonly Bound[],
): Found | NotFound {
  const { stock, problem } = state;
  const { crew, crewIndex, hours } = choice;
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
  for (const floor of floors) if (floor.at > at) push(floor.at, floor.reason);
  for (;;) {
    const fit = fitHours(node, hours, at, problem.end);
    if (!fit.fits) {
      if (fit.to === null) return { found: false, reason: fit.reason, pool: null };
      push(fit.to, fit.reason);
      continue;
    }
    const { finish } = fit;
    if (finish > problem.end) {
      return { found: false, reason: bindingReason(ready.reason, trail), pool: null };
    }
    const busy = crewIndex < 0 ? -1 : busyWith(state, node, crewIndex, at, finish);
    if (busy >= 0) {
      const timeline = state.timeline(crewIndex);
      const owner = problem.nodes[timeline.ownerOf(busy)]!;
      const until = timeline.toOf(busy);
      const ahead = aheadOf(owner, node, problem.input);
      push(until, { kind: 'crew', crewId: crew!.id, phaseId: owner.id, until, ahead });
      continue;
    }
    const short = stock.shortFor(node, at, finish);
    if (short) {
      const reason = stock.blame(short.pool, short, node);
      if (short.to === Infinity) return { found: false, reason, pool: short.pool };
      push(slot(short.to), reason);
      continue;
    }
    const reason = bindingReason(ready.reason, trail);
    const { at: readyAt, reason: readyReason } = ready;
    return {
      found: true,
      crew,
      crewIndex,
      hours,
      start: at,
      finish,
      ready: readyAt,
      readyReason,
      trail,
      reason,
    };
  }
}

/** The stretch of the crew's other work that stands in the way of a phase; -1 for none. */
export function busyWith(state: State, node: Node, crew: number, start: Slot, finish: Slot): number {
  const timeline = state.timeline(crew);
  return letsCrewGo(node)
    ? timeline.firstOutside(start, finish, node.weather!.closedTime)
    : timeline.blockedBy(start, finish, node.length, node.phase.duration.kind === 'work');
}
