import { finishAt, waitFor } from './fit-hours.js';
import type { Bound } from './lower-bounds.js';
import type { Reason, TrailStep } from './model.js';
import { bindingReason, type Placement } from './outcome.js';
import type { Choice, CompiledPool, Node } from './problem.js';
import { aheadOf } from './rank.js';
import { slot, type Slot } from './slot.js';
import { letsCrewGo, type State } from './state.js';

/** No place inside the horizon, and the wait that never ends. */
export interface NotFound {
  readonly placed: false;
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
): Placement | NotFound {
  const { stock, problem } = state;
  const { crew, crewIndex, hours } = choice;
  let trail = NO_STEPS;
  let at = ready.at;
  for (const floor of floors) {
    if (floor.at <= at) continue;
    trail = withStep(trail, at, floor.at, floor.reason);
    ({ at } = floor);
  }
  for (;;) {
    const finish = finishAt(node, hours, at);
    if (finish === null) {
      const { to, reason } = waitFor(node, hours, at, problem.end);
      if (to === null) return { placed: false, reason, pool: null };
      trail = withStep(trail, at, to, reason);
      at = to;
      continue;
    }
    if (finish > problem.end) {
      return { placed: false, reason: bindingReason(ready.reason, trail), pool: null };
    }
    const busy = crewIndex < 0 ? -1 : busyWith(state, node, crewIndex, at, finish);
    if (busy >= 0) {
      const timeline = state.timeline(crewIndex);
      const owner = problem.nodes[timeline.ownerOf(busy)]!;
      const until = timeline.toOf(busy);
      const ahead = aheadOf(owner, node, problem.input);
      trail = withStep(trail, at, until, {
        kind: 'crew',
        crewId: crew!.id,
        phaseId: owner.id,
        until,
        ahead,
      });
      at = until;
      continue;
    }
    const short = node.needs.length === 0 ? undefined : stock.shortFor(node, at, finish);
    if (short) {
      const reason = stock.blame(short.pool, short, node);
      if (short.to === Infinity) return { placed: false, reason, pool: short.pool };
      trail = withStep(trail, at, slot(short.to), reason);
      at = slot(short.to);
      continue;
    }
    return {
      placed: true,
      state: 'planned',
      start: at,
      finish,
      crew,
      crewIndex,
      hours,
      ready: ready.at,
      readyReason: ready.reason,
      trail,
      reason: bindingReason(ready.reason, trail),
      conflicts: NO_CONFLICTS,
    };
  }
}

/** One wait more; closed hours that follow each other are one. */
function withStep(trail: TrailStep[], from: Slot, to: Slot, reason: Reason): TrailStep[] {
  const last = trail[trail.length - 1];
  if (!last) return [{ from, to, reason }];
  if (reason.kind === 'calendar' && last.reason.kind === 'calendar') {
    trail[trail.length - 1] = { from: last.from, to, reason };
  } else trail.push({ from, to, reason });
  return trail;
}

const NO_STEPS: TrailStep[] = [];
const NO_CONFLICTS: Placement['conflicts'] = [];

/** The stretch of the crew's other work that stands in the way of a phase; -1 for none. */
export function busyWith(state: State, node: Node, crew: number, start: Slot, finish: Slot): number {
  const timeline = state.timeline(crew);
  return letsCrewGo(node)
    ? timeline.firstOutside(start, finish, node.weather!.closedTime)
    : timeline.blockedBy(start, finish, node.length, node.phase.duration.kind === 'work');
}
