import type { CompiledCalendar } from './compiled-calendar.js';
import type { Link, LinkKind } from './model.js';
import type { Hours } from './problem.js';
import type { Node } from './problem.js';
import { slot, type Slot } from './slot.js';

/** Before everything: a bound that binds nothing. */
export const LONG_AGO = slot(-(2 ** 30));

/** After everything, likewise. */
const FAR_AHEAD = slot(2 ** 30);

/** Whether a link starts at its predecessor's finish. */
export function fromFinish(kind: LinkKind): boolean {
  return kind === 'FS' || kind === 'FF';
}

/** Whether a link binds its successor's finish. */
export function toFinish(kind: LinkKind): boolean {
  return kind === 'FF' || kind === 'SF';
}

/** Earliest instant that a link allows, counted from its predecessor's; null beyond the calendar. */
export function lagAfter(link: Link, from: Slot, successor: CompiledCalendar): Slot | null {
  if (link.lagIn === 'elapsed' || link.lag === 0) return slot(from + link.lag);
  const count = successor.worked(from) + link.lag;
  return count <= 0 ? LONG_AGO : successor.reach(count);
}

/** Latest instant of the predecessor that still lets the successor be at `to`. */
export function lagBefore(link: Link, to: Slot, successor: CompiledCalendar): Slot {
  if (link.lagIn === 'elapsed' || link.lag === 0) return slot(to - link.lag);
  const count = successor.worked(to) - link.lag;
  if (count < 0) return LONG_AGO;
  return successor.at(count) ?? FAR_AHEAD;
}

/** Earliest start with which a phase finishes at `finish` or later: work is never stretched. */
export function startForFinish(node: Node, hours: Hours, finish: Slot): Slot {
  const { duration } = node.phase;
  if (node.length === 0 || duration.kind === 'elapsed' || duration.mode === 'continuous') {
    return slot(finish - node.length);
  }
  const count = hours.workable.worked(slot(finish - 1)) - node.length + 1;
  if (count <= 0) return LONG_AGO;
  return hours.workable.reach(count)!;
}
