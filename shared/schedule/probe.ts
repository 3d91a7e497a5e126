import type { CompiledCalendar } from './compiled-calendar.js';
import type { Hours, Node } from './problem.js';
import { FOREVER } from './view.js';
import { busyWith } from './search.js';
import type { Slot } from './slot.js';
import type { State } from './state.js';

/** A place as bare numbers; `start` is -1 when there is none. One object serves every question. */
export interface Probed {
  start: number;
  finish: number;
  /** Where hours and weather alone would let it start. */
  first: number;
  /** The latest instant that was looked at. */
  reach: number;
}

/**
 * The start that `findEarliest` finds, without the reasons: for choosing between crews, so for a phase of some length.
 *
 * @param from all bounds are met from here on
 * @param latest a later start is of no use
 */
export function probe(
  state: State,
  node: Node,
  crew: number,
  hours: Hours,
  from: Slot,
  latest: number,
  into: Probed,
): void {
  const { end } = state.problem;
  let at: number = from;
  into.first = -1;
  into.reach = from;
  for (;;) {
    fitFrom(node, hours, at, into);
    at = into.finish < 0 ? FOREVER : into.start;
    if (into.first < 0) into.first = at;
    const { finish } = into;
    if (at === FOREVER || finish > end) break;
    into.reach = finish;
    if (at > latest) {
      into.start = -1;
      return;
    }
    const busy = busyWith(state, node, crew, at as Slot, finish as Slot);
    if (busy >= 0) {
      at = state.timeline(crew).toOf(busy);
      continue;
    }
    const short =
      node.needs.length === 0 ? undefined : state.stock.shortFor(node, at as Slot, finish as Slot);
    if (!short) {
      into.start = at;
      return;
    }
    if (short.to === Infinity) break;
    at = short.to;
  }
  into.start = -1;
  into.reach = FOREVER;
}

/** The earliest start from `at` on that suits hours and weather; `finish` is -1 when none does. */
function fitFrom(node: Node, { own, workable }: Hours, at: number, into: Probed): void {
  const { length } = node;
  const { duration } = node.phase;
  let start: number | null;
  let finish: number | null;
  if (duration.kind === 'elapsed') {
    start = startOfWait(own, node.weather?.closedTime, at, length);
    finish = start === null ? null : start + length;
  } else if (duration.mode === 'interruptible') {
    start = workable.snap(at);
    finish = start === null ? null : workable.add(start, length);
  } else {
    start = workable.gap(at, length);
    finish = start === null ? null : start + length;
  }
  into.start = start ?? -1;
  into.finish = finish ?? -1;
}

/** A wait starts in open time, and no closing weather touches it. */
function startOfWait(
  own: CompiledCalendar,
  closed: CompiledCalendar | undefined,
  from: number,
  length: number,
): number | null {
  let at = own.snap(from);
  while (at !== null && closed) {
    const hit = closed.snap(at);
    if (hit === null || hit >= at + length) return at;
    at = own.snap(closed.endOf(hit));
  }
  return at;
}
