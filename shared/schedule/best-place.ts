import { gateBounds, readyBound, type Bound } from './lower-bounds.js';
import type { Placement } from './outcome.js';
import { probe, type Probed } from './probe.js';
import type { Choice, Hours, Node } from './problem.js';
import type { Reads } from './reads.js';
import { FOREVER } from './view.js';
import { findEarliest, type NotFound } from './search.js';
import type { Slot } from './slot.js';
import type { State } from './state.js';

/**
 * The best place for a phase among crews: earliest start, then earliest finish, then the first of the choices. Every crew is tried by bare
 * numbers; only the best is looked at again for its reasons.
 *
 * @param floors earliest starts to respect after the gates, with their reasons
 * @param reads notes how far the search looked
 */
export function bestPlace(
  state: State,
  node: Node,
  choices: readonly Choice[],
  floors: readonly Bound[],
  reads: Reads,
): Placement | NotFound {
  const gates = gatesOf(state, node);
  const bounds = floors.length === 0 ? gates : [...gates, ...floors];
  const first = choices[0]!;
  const { hours } = first;
  const ready = readyBound(node, hours, state.outcomes, state.problem.input.now);
  if (choices.length === 1) return placeWith(state, node, first, ready, bounds, reads);
  let best: Choice | undefined;
  let bestReady = ready;
  let start = FOREVER;
  let finish = FOREVER;
  let soonest = -1;
  for (const choice of choices) {
    // Nobody who works the same hours can be sooner than hours and weather let anybody.
    if (start === soonest && choice.hours === best!.hours) continue;
    const from = choice.hours === hours ? ready : readyOf(state, node, choice.hours);
    if (!from) continue;
    const latest = best && choice.hours === best.hours ? start - 1 : start;
    probe(state, node, choice.crewIndex, choice.hours, floorOf(from, bounds), latest, PROBED);
    reads.add(node, from.at, PROBED.reach);
    if (PROBED.start < 0 || (PROBED.start === start && PROBED.finish >= finish)) continue;
    best = choice;
    bestReady = from;
    ({ start, finish, first: soonest } = PROBED);
  }
  return placeWith(state, node, best ?? first, best ? bestReady : ready, bounds, reads);
}

/** What a probe tells: read at once, before the next. */
const PROBED: Probed = { start: -1, finish: -1, first: -1, reach: 0 };

function readyOf(state: State, node: Node, hours: Hours): Bound | null {
  return readyBound(node, hours, state.outcomes, state.problem.input.now);
}

function floorOf(ready: Bound, bounds: readonly Bound[]): Slot {
  let { at } = ready;
  for (const bound of bounds) if (bound.at > at) ({ at } = bound);
  return at;
}

function placeWith(
  state: State,
  node: Node,
  choice: Choice,
  ready: Bound | null,
  bounds: readonly Bound[],
  reads: Reads,
): Placement | NotFound {
  if (!ready) {
    const { calendarId } = choice.hours;
    return {
      placed: false,
      reason: { kind: 'calendar', calendarId, until: state.problem.end },
      pool: null,
    };
  }
  const place = findEarliest(state, node, choice, ready, bounds);
  reads.add(node, ready.at, place.placed ? place.finish : FOREVER);
  return place;
}

/** Earliest starts by the phase's gates. */
export function gatesOf(state: State, node: Node): readonly Bound[] {
  const { gates } = node.phase;
  if (!gates || gates.length === 0) return NO_BOUNDS;
  return gateBounds(gates, (id) => state.visitOf(node.visits.find((v) => v.inspection.id === id)!));
}

/** No bounds. */
export const NO_BOUNDS: readonly Bound[] = [];
