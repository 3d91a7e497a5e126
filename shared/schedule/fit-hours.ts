import type { Reason } from './model.js';
import type { Hours, Node } from './problem.js';
import { slot, type Slot } from './slot.js';
import type { CoverHold } from './weather-cover.js';

/** A wait that has to come first; `to` is null when the hours never suit again. */
export interface Wait {
  readonly to: Slot | null;
  readonly reason: Reason;
}

/** When a phase that starts at an instant finishes; null when hours or weather do not let it start there. */
export function finishAt(node: Node, { own, workable }: Hours, at: Slot): Slot | null {
  const { length } = node;
  const { duration } = node.phase;
  if (length === 0) return workable.snapInstant(at) === at ? at : null;
  if (duration.kind === 'elapsed') {
    const finish = slot(at + length);
    return own.isOpen(at) && !node.weather?.firstIn(at, finish) ? finish : null;
  }
  if (duration.mode === 'continuous') return workable.gap(at, length) === at ? slot(at + length) : null;
  return workable.isOpen(at) ? workable.add(at, length) : null;
}

/**
 * Why a phase cannot start at an instant, and until when. Repeating with each `to` leads to the earliest start that fits, and names every
 * wait on the way.
 */
export function waitFor(node: Node, hours: Hours, at: Slot, horizon: Slot): Wait {
  const { duration } = node.phase;
  if (node.length === 0) return waitForInstant(node, hours, at, horizon);
  const opens = hours.own.snap(at);
  if (opens !== at) return closed(hours, opens, horizon);
  if (duration.kind === 'elapsed') return held(node.weather!.firstIn(at, slot(at + node.length))!);
  const hold = node.weather?.firstIn(at, slot(at + 1));
  if (hold) return held(hold);
  return duration.mode === 'interruptible'
    ? blame(node, hours, at, horizon)
    : waitForStretch(node, hours, at, horizon);
}

/** A milestone lies in open time and fair weather, or at the edge of it. */
function waitForInstant(node: Node, hours: Hours, at: Slot, horizon: Slot): Wait {
  const to = hours.workable.snapInstant(at);
  const openHere = hours.own.snapInstant(at) === at;
  const hold = openHere ? node.weather?.firstIn(slot(at - 1), slot(at + 1)) : undefined;
  return hold ? { ...held(hold), to } : closed(hours, to, horizon);
}

function waitForStretch(node: Node, hours: Hours, at: Slot, horizon: Slot): Wait {
  const next = hours.own.gap(at, node.length);
  if (next === null) return blame(node, hours, at, horizon);
  if (next > at) return closed(hours, next, horizon);
  return held(node.weather!.firstIn(at, slot(at + node.length))!);
}

/** Too little open time is left: weather's doing if the hours alone would do. */
function blame(node: Node, hours: Hours, at: Slot, horizon: Slot): Wait {
  const hold = hours.own.add(at, node.length) === null ? undefined : node.weather?.firstIn(at, horizon);
  if (hold) return { ...held(hold), to: null };
  return { to: null, reason: closedReason(hours, horizon) };
}

function held(hold: CoverHold): { to: Slot; reason: Reason } {
  const { weatherId, to, cause } = hold;
  return { to, reason: { kind: 'weather', weatherId, until: to, cause } };
}

function closed(hours: Hours, to: Slot | null, horizon: Slot): Wait {
  return { to, reason: closedReason(hours, to ?? horizon) };
}

function closedReason(hours: Hours, until: Slot): Reason {
  return { kind: 'calendar', calendarId: hours.calendarId, until };
}
