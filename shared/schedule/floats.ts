import type { CompiledCalendar } from './compiled-calendar.js';
import { overrun } from './greatest-lag.js';
import { fromFinish, lagBefore, toFinish } from './link-lag.js';
import type { Placement } from './outcome.js';
import { finishFrom } from './pinned.js';
import { edgeBinds, type Node, type Visit } from './problem.js';
import { slot, type Slot, type SlotCount } from './slot.js';
import type { State } from './state.js';

/** No float: what is finished or has no place. */
const NONE = -(2 ** 31);

/**
 * The backward pass. Late dates honour links, inspections, hours and weather and end at the job's planned finish; other work for the same
 * crew is left out, as in the textbook definition. Total float is latest less planned start, free float the least slack over outgoing
 * links, bounded by the job's finish; both counted in the phase's own open slots. A started phase is measured at its finish. Greatest lags
 * bound the free float only: with total float what comes before slips along.
 */
export class FloatPass {
  private readonly total: Int32Array;
  private readonly free: Int32Array;
  /** Latest start and finish of each phase; `NONE` where it has no place. */
  private readonly lateStart: Int32Array;
  private readonly lateFinish: Int32Array;
  private readonly ends: Float64Array;

  /**
   * @param places indexes of phases, prerequisites first
   */
  constructor(
    private readonly state: State,
    private readonly places: Int32Array,
  ) {
    const { nodes, jobs } = state.problem;
    this.total = new Int32Array(nodes.length);
    this.free = new Int32Array(nodes.length);
    this.lateStart = new Int32Array(nodes.length);
    this.lateFinish = new Int32Array(nodes.length);
    this.ends = new Float64Array(jobs.length);
  }

  /** How far a phase can slip before its job finishes later, in its own open time; null for what is finished or has no place. */
  totalOf({ index }: Node): SlotCount | null {
    const total = this.total[index]!;
    return total === NONE ? null : total;
  }

  /** How far it can slip before anything after it moves. */
  freeOf({ index }: Node): SlotCount | null {
    return this.total[index] === NONE ? null : this.free[index]!;
  }

  /** Goes over everything. */
  all(): void {
    for (const numbers of [this.total, this.free, this.lateStart, this.lateFinish]) numbers.fill(NONE);
    const { nodes, jobs } = this.state.problem;
    for (let job = 0; job < jobs.length; job++) this.findEnd(job);
    for (let i = this.places.length - 1; i >= 0; i--) this.rate(nodes[this.places[i]!]!);
  }

  /**
   * Goes over what may have changed: phases placed anew, what comes before them, and jobs that end at another time. Only for plans in which
   * everything has its place.
   * @returns phases whose floats are not what they were
   */
  some(renewed: ReadonlySet<Node>): Set<Node> {
    const { nodes, phasesOf } = this.state.problem;
    const { places, total, free, lateStart, lateFinish } = this;
    const due = new Uint8Array(nodes.length);
    const jobs = new Set<number>();
    for (const node of renewed) {
      jobs.add(node.jobIndex);
      due[node.index] = 1;
      for (const { from } of node.ins) due[from.index] = 1;
      for (const { after } of node.visitsAfter) for (const { index } of after) due[index] = 1;
    }
    for (const job of jobs) {
      if (this.findEnd(job)) for (const { index } of phasesOf[job]!) due[index] = 1;
    }
    const changed = new Set<Node>();
    for (let i = places.length - 1; i >= 0; i--) {
      const index = places[i]!;
      if (due[index] === 0) continue;
      const node = nodes[index]!;
      const start = lateStart[index];
      const finish = lateFinish[index];
      const slack = total[index];
      const own = free[index];
      this.rate(node);
      if (start !== lateStart[index] || finish !== lateFinish[index]) {
        for (const { from } of node.ins) due[from.index] = 1;
        for (const { after } of node.visits) for (const { index: before } of after) due[before] = 1;
      }
      if (slack !== total[index] || own !== free[index]) changed.add(node);
    }
    return changed;
  }

  /** Finds when a job ends; true when that is not what it was. */
  private findEnd(job: number): boolean {
    const { problem, outcomes } = this.state;
    let end = -Infinity;
    for (const { index } of problem.phasesOf[job]!) {
      const outcome = outcomes[index];
      if (outcome?.placed && outcome.finish > end) end = outcome.finish;
    }
    const same = end === this.ends[job];
    this.ends[job] = end;
    return !same;
  }

  private rate(node: Node): void {
    const { index } = node;
    const { outcomes } = this.state;
    const placed = outcomes[index];
    if (!placed?.placed) return;
    let finish = this.ends[node.jobIndex]!;
    let start = Infinity;
    let soonFinish = finish;
    let soonStart = start;
    for (const edge of node.outs) {
      const to = outcomes[edge.to.index];
      if (!to?.placed || !edgeBinds(edge)) continue;
      const { link } = edge;
      const ends = toFinish(link.kind);
      const { own } = to.hours;
      const soon = lagBefore(link, ends ? to.finish : to.start, own);
      const late = (ends ? this.lateFinish : this.lateStart)[edge.to.index]!;
      const at = late === NONE ? Infinity : lagBefore(link, late as Slot, own);
      if (fromFinish(link.kind)) {
        if (soon < soonFinish) soonFinish = soon;
        if (at < finish) finish = at;
      } else {
        if (soon < soonStart) soonStart = soon;
        if (at < start) start = at;
      }
    }
    for (const visit of node.visitsAfter) {
      if (visit.inspection.state.kind === 'passed') continue;
      finish = Math.min(finish, this.latestOf(visit));
      const soon = this.state.visitOf(visit).start;
      if (soon !== null && soon < soonFinish) soonFinish = soon;
    }
    const late = latestStart(node, placed, finish, start);
    this.lateStart[index] = late;
    this.lateFinish[index] = node.started ? finish : finishFrom(node, placed.hours, late as Slot)!;
    if (node.finished) return;
    const { own } = placed.hours;
    if (node.started) {
      const worked = own.worked(placed.finish);
      this.total[index] = own.worked(finish) - worked;
      this.free[index] = this.withinMosts(node, placed, own.worked(soonFinish) - worked);
      return;
    }
    const worked = own.worked(placed.start);
    const same = soonFinish === finish && soonStart === start;
    const soon = same ? late : latestStart(node, placed, soonFinish, soonStart);
    this.total[index] = own.worked(late) - worked;
    this.free[index] = this.withinMosts(node, placed, own.worked(soon) - worked);
  }

  /** The free float that leaves every greatest lag to this phase kept. */
  private withinMosts(node: Node, placed: Placement, slack: SlotCount): SlotCount {
    let least = slack;
    for (const edge of node.ins) {
      if (edge.link.mostLag === undefined) continue;
      const from = this.state.outcomes[edge.from.index];
      if (!from?.placed || !edgeBinds(edge)) continue;
      while (least > 0 && overrun(edge, from, slipped(node, placed, least))) least--;
    }
    return least;
  }

  /** Latest start of a visit that still ends before the latest starts of those that wait for it. */
  private latestOf(visit: Visit): number {
    const planned = this.state.visitOf(visit);
    let latest = Infinity;
    for (const { index, started } of visit.gated) {
      const start = this.lateStart[index]!;
      if (started || start === NONE) continue;
      const booked = planned.state === 'booked' ? planned.start : null;
      const at = booked ?? visit.hours.gapBefore(start, visit.inspection.visit);
      if (at !== null && at < latest) latest = at;
    }
    return latest;
  }
}

/** A phase so many of its own open slots later, as far as its float reaches at most; of one that has begun only the finish. */
function slipped(node: Node, placed: Placement, slots: SlotCount): Placement {
  const { own } = placed.hours;
  if (node.started) return { ...placed, finish: own.reach(own.worked(placed.finish) + slots)! };
  const count = own.worked(placed.start) + slots;
  const start = (node.length === 0 ? own.reach(count) : own.at(count))!;
  return { ...placed, start, finish: finishFrom(node, placed.hours, start)! };
}

/** The latest start inside the bounds; the planned one where the hours leave no other, or it is a fact. */
function latestStart(node: Node, placed: Placement, byFinish: number, byStart: number): number {
  if (node.started) return placed.start;
  let start = latestBefore(node, placed, byFinish as Slot);
  if (start !== null && byStart < start) start = snapBack(node, placed, byStart as Slot);
  return start ?? placed.start;
}

/** The latest start with which it finishes by an instant. */
function latestBefore(node: Node, { hours }: Placement, finish: Slot): Slot | null {
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
