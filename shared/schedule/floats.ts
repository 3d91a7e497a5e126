import { hasFinished, hasStarted, stillBinds } from './dependencies.js';
import type { CompiledCalendar } from './compiled-calendar.js';
import { fromFinish, lagBefore, toFinish } from './link-lag.js';
import type { SlotCount } from './slot.js';
import type { Placement } from './outcome.js';
import { finishFrom } from './pinned.js';
import type { Node, Visit } from './problem.js';
import { slot, type Slot } from './slot.js';
import type { State } from './state.js';

/** How far a phase can slip, in its own open time. */
export interface Floats {
  readonly total: SlotCount;
  readonly free: SlotCount;
}

interface Latest {
  readonly start: Slot;
  readonly finish: Slot;
}

/** Bounds from behind: latest finish and latest start. */
interface Bounds {
  finish: number;
  start: number;
}

/**
 * The backward pass. Late dates honour links, inspections, hours and weather and end at the job's planned finish; other work for the same
 * crew is left out, as in the textbook definition. Total float is latest less planned start, free float the least slack over outgoing
 * links, bounded by the job's finish; both counted in the phase's own open slots. A started phase is measured at its finish.
 *
 * @param sequence phases with prerequisites first
 */
export function computeFloats(state: State, sequence: readonly Node[]): (Floats | null)[] {
  const ends = jobEnds(state);
  const latest: (Latest | undefined)[] = [];
  const visitLatest = new Map<Visit, number>();
  const floats: (Floats | null)[] = state.outcomes.map(() => null);
  for (let i = sequence.length - 1; i >= 0; i--) {
    const node = sequence[i]!;
    const placed = state.outcomes[node.index];
    if (!placed?.placed) continue;
    const end = ends.get(node.job.id)!;
    const late = boundsFrom(
      node,
      end,
      state,
      (to) => latest[to.index],
      (visit) => visitLatest.get(visit),
    );
    const soon = boundsFrom(
      node,
      end,
      state,
      (to) => placedOf(state, to),
      (visit) => state.visitOf(visit).start,
    );
    const at = latestPlace(node, placed, late);
    latest[node.index] = at;
    for (const visit of node.visits) noteVisit(state, visit, at.start, visitLatest);
    if (hasFinished(node)) continue;
    const free = latestPlace(node, placed, soon);
    floats[node.index] = { total: slip(node, placed, at), free: slip(node, placed, free) };
  }
  return floats;
}

function jobEnds(state: State): Map<string, number> {
  const ends = new Map<string, number>();
  state.outcomes.forEach((outcome, index) => {
    if (!outcome?.placed) return;
    const { id } = state.problem.nodes[index]!.job;
    ends.set(id, Math.max(ends.get(id) ?? -Infinity, outcome.finish));
  });
  return ends;
}

function placedOf(state: State, node: Node): Latest | undefined {
  const outcome = state.outcomes[node.index];
  return outcome?.placed ? outcome : undefined;
}

function boundsFrom(
  node: Node,
  end: number,
  state: State,
  whereIs: (to: Node) => Latest | undefined,
  visitStart: (visit: Visit) => number | null | undefined,
): Bounds {
  const bounds: Bounds = { finish: end, start: Infinity };
  for (const edge of node.outs) {
    const to = whereIs(edge.to);
    const placed = state.outcomes[edge.to.index];
    if (!stillBinds(edge) || !to || !placed?.placed) continue;
    const { link } = edge;
    const at = lagBefore(link, toFinish(link.kind) ? to.finish : to.start, placed.hours.own);
    if (fromFinish(link.kind)) bounds.finish = Math.min(bounds.finish, at);
    else bounds.start = Math.min(bounds.start, at);
  }
  for (const visit of node.visitsAfter) {
    const at = visit.inspection.state.kind === 'passed' ? null : visitStart(visit);
    if (at !== null && at !== undefined) bounds.finish = Math.min(bounds.finish, at);
  }
  return bounds;
}

/** Latest start of a visit that still ends before a gated phase's latest start. */
function noteVisit(state: State, visit: Visit, phaseStart: Slot, latest: Map<Visit, number>): void {
  const planned = state.visitOf(visit);
  const length = visit.inspection.visit;
  const at = planned.state === 'booked' ? planned.start : visit.hours.gapBefore(phaseStart, length);
  if (at !== null) latest.set(visit, Math.min(latest.get(visit) ?? Infinity, at));
}

/** The latest dates inside the bounds; the planned ones where the hours leave no other. */
function latestPlace(node: Node, placed: Placement, bounds: Bounds): Latest {
  if (hasStarted(node)) return { start: placed.start, finish: bounds.finish as Slot };
  const { hours } = placed;
  const byFinish = latestStart(node, placed, bounds.finish as Slot);
  let start = byFinish;
  if (start !== null && bounds.start < start) start = snapBack(node, placed, bounds.start as Slot);
  if (start === null) return placed;
  return { start, finish: finishFrom(node, hours, start) ?? placed.finish };
}

function latestStart(node: Node, { hours }: Placement, finish: Slot): Slot | null {
  const { duration } = node.phase;
  if (duration.kind === 'work' && node.length > 0) {
    return duration.mode === 'interruptible'
      ? hours.workable.subtract(finish, node.length)
      : hours.workable.gapBefore(finish, node.length);
  }
  return lastOpen(hours.own, slot(finish - node.length), node.length === 0);
}

function snapBack(node: Node, placed: Placement, start: Slot): Slot | null {
  const { duration } = node.phase;
  if (duration.kind === 'work' && duration.mode === 'continuous' && node.length > 0) {
    return placed.hours.workable.gapBefore(slot(start + node.length), node.length);
  }
  const hours = duration.kind === 'work' ? placed.hours.workable : placed.hours.own;
  return lastOpen(hours, start, node.length === 0);
}

/** `t` when open, else the last open slot before it; for things of no length the end of a stretch counts as open. */
function lastOpen(hours: CompiledCalendar, t: Slot, instant: boolean): Slot | null {
  if (instant ? hours.snapInstant(t) === t : hours.isOpen(t)) return t;
  const count = hours.worked(t);
  if (count === 0) return null;
  return instant ? hours.reach(count) : hours.at(count - 1);
}

function slip(node: Node, placed: Placement, latest: Latest): SlotCount {
  const { own } = placed.hours;
  return hasStarted(node)
    ? own.worked(latest.finish) - own.worked(placed.finish)
    : own.worked(latest.start) - own.worked(placed.start);
}
