import type { Reason } from './model.js';
import type { Hours, Node } from './problem.js';
import { slot, type Slot } from './slot.js';
import type { CoverHold } from './weather-cover.js';

/** A start that suits the hours, or the wait that has to come first. `to` is null when the hours never suit again. */
export type Fit =
  | { readonly fits: true; readonly finish: Slot }
  | { readonly fits: false; readonly to: Slot | null; readonly reason: Reason };

/**
 * Tries a phase at one instant against open hours and weather. Repeating with each `to` leads to the earliest start that fits,
 * and names every wait on the way.
 */
export function fitHours(node: Node, hours: Hours, at: Slot, horizon: Slot): Fit {
  const { duration } = node.phase;
  if (node.length === 0) return fitInstant(node, hours, at, horizon);
  const opens = hours.own.snap(at);
  if (opens !== at) return closed(hours, opens, horizon);
  if (duration.kind === 'elapsed') return fitElapsed(node, at);
  const hold = node.weather?.firstIn(at, slot(at + 1));
  if (hold) return wait(hold);
  if (duration.mode === 'interruptible') {
    const finish = hours.workable.add(at, node.length);
    return finish === null ? blame(node, hours, at, horizon) : { fits: true, finish };
  }
  return fitContinuous(node, hours, at, horizon);
}

/** A milestone lies in open time and fair weather, or at the edge of it. */
function fitInstant(node: Node, hours: Hours, at: Slot, horizon: Slot): Fit {
  const to = hours.workable.snapInstant(at);
  if (to === at) return { fits: true, finish: at };
  const openHere = hours.own.snapInstant(at) === at;
  const hold = openHere ? node.weather?.firstIn(slot(at - 1), slot(at + 1)) : undefined;
  return hold ? { ...wait(hold), to } : closed(hours, to, horizon);
}

/** A cure runs on through closed hours, but no closing weather may touch it. */
function fitElapsed(node: Node, at: Slot): Fit {
  const finish = slot(at + node.length);
  const hold = node.weather?.firstIn(at, finish);
  if (!hold) return { fits: true, finish };
  return wait(hold);
}

function fitContinuous(node: Node, hours: Hours, at: Slot, horizon: Slot): Fit {
  const finish = slot(at + node.length);
  if (hours.workable.gap(at, node.length) === at) return { fits: true, finish };
  const next = hours.own.gap(at, node.length);
  if (next === null) return blame(node, hours, at, horizon);
  if (next > at) return closed(hours, next, horizon);
  return wait(node.weather!.firstIn(at, finish)!);
}

/** Too little open time is left: weather's doing if the hours alone would do. */
function blame(node: Node, hours: Hours, at: Slot, horizon: Slot): Fit {
  const hold = hours.own.add(at, node.length) === null ? undefined : node.weather?.firstIn(at, horizon);
  if (hold) return { ...wait(hold), to: null };
  return { fits: false, to: null, reason: closedReason(hours, horizon) };
}

function wait(hold: CoverHold): Extract<Fit, { fits: false }> {
  const { weatherId, to, cause } = hold;
  return { fits: false, to, reason: { kind: 'weather', weatherId, until: to, cause } };
}

function closed(hours: Hours, to: Slot | null, horizon: Slot): Fit {
  return { fits: false, to, reason: closedReason(hours, to ?? horizon) };
}

function closedReason(hours: Hours, until: Slot): Reason {
  return { kind: 'calendar', calendarId: hours.calendarId, until };
}
