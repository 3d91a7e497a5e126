import { bestPlace, gatesOf } from './best-place.js';
import { finishAt, waitFor } from './fit-hours.js';
import { readyBound, type Bound } from './lower-bounds.js';
import type { Conflict, Reason } from './model.js';
import type { Placement } from './outcome.js';
import type { Choice, Hours, Node } from './problem.js';
import type { Reads } from './reads.js';
import type { NotFound } from './search.js';
import { slot, type Slot } from './slot.js';
import type { State } from './state.js';

/** A place with what is wrong about it. */
export interface FixedPlace {
  readonly place: Placement | NotFound;
  readonly conflicts: readonly Conflict[];
}

/**
 * Places a pinned phase. The pin holds, with a conflict, against links, gates and closed time; it gives way only to the present, to a
 * crew that is taken and to equipment that is out.
 */
export function placePinned(
  state: State,
  node: Node,
  floors: readonly Bound[],
  reads: Reads,
  reserved = -1,
): FixedPlace {
  const pin = node.phase.facts!.pinnedStart!;
  const reason: Reason = { kind: 'pin', at: pin };
  const own = node.choices.filter(({ crewIndex }) => crewIndex === reserved);
  const choices = [...own, ...node.choices.filter((choice) => choice !== own[0])];
  const floor = { at: pin, reason };
  const free = bestPlace(state, node, choices, [...floors, floor], reads);
  if (free.placed && free.start === pin) return { place: free, conflicts: [] };
  if (pin >= state.problem.input.now && floors.every(({ at }) => at <= pin)) {
    for (const choice of choices) {
      const forced = forcePin(state, node, choice, pin, reads);
      if (forced) return forced;
    }
  }
  const start = free.placed ? free.start : pin;
  return { place: free, conflicts: [{ code: 'pinMoved', phaseId: node.id, pin, start, cause: free.reason }] };
}

/** Puts the phase at the pin if crew and equipment can be had there. */
function forcePin(
  state: State,
  node: Node,
  { crew, crewIndex, hours }: Choice,
  pin: Slot,
  reads: Reads,
): FixedPlace | undefined {
  const finish = finishFrom(node, hours, pin);
  if (finish === null || finish > state.problem.end) return undefined;
  reads.add(node, pin, finish);
  if (crewIndex >= 0 && state.timeline(crewIndex).firstIn(pin, finish) >= 0) return undefined;
  if (state.stock.shortFor(node, pin, finish)) return undefined;
  const base = { phaseId: node.id, pin };
  const conflicts: Conflict[] = [];
  const ready = readyBound(node, hours, state.outcomes, state.problem.input.now) ?? never(state, hours);
  if (ready.at > pin) {
    conflicts.push({ code: 'pinBeforePredecessor', ...base, earliest: ready.at, cause: ready.reason });
  }
  const gate = gatesOf(state, node).at(-1);
  if (gate && gate.at > pin) {
    conflicts.push({ code: 'pinBeforeGate', ...base, earliest: gate.at, cause: gate.reason });
  }
  if (finishAt(node, hours, pin) === null) {
    const { to, reason: cause } = waitFor(node, hours, pin, state.problem.end);
    conflicts.push({ code: 'pinInClosedTime', ...base, earliest: to ?? pin, cause });
  }
  const reason: Reason = { kind: 'pin', at: pin };
  const from = slot(Math.min(ready.at, pin));
  const trail = from < pin ? [{ from, to: pin, reason }] : [];
  const readyReason = ready.at <= pin ? ready.reason : reason;
  const place: Placement = {
    placed: true,
    state: 'planned',
    start: pin,
    finish,
    crew,
    crewIndex,
    hours,
    ready: from,
    readyReason,
    trail,
    reason,
    conflicts,
  };
  return { place, conflicts };
}

/** A lag that outruns the calendar lets a phase start only after the horizon. */
function never({ problem: { end } }: State, { calendarId }: Hours): Bound {
  return { at: slot(end + 1), reason: { kind: 'calendar', calendarId, until: end } };
}

/** Finish of work that starts at a given slot, open or not; continuous work then runs straight through. */
export function finishFrom(node: Node, hours: Hours, start: Slot): Slot | null {
  const { duration } = node.phase;
  if (duration.kind === 'work' && duration.mode === 'interruptible')
    return hours.workable.add(start, node.length);
  return slot(start + node.length);
}
