import type { CompiledCalendar } from './compiled-calendar.js';
import { overrun } from './greatest-lag.js';
import { fromFinish, lagBefore, toFinish } from './link-lag.js';
import type { Placement } from './outcome.js';
import { finishFrom } from './pinned.js';
import { edgeBinds, type Node, type Visit } from './problem.js';
import { slot, type Slot, type SlotCount } from './slot.js';
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

/**
 * The backward pass. Late dates honour links, inspections, hours and weather and end at the job's planned finish; other work for the same
 * crew is left out, as in the textbook definition. Total float is latest less planned start, free float the least slack over outgoing
 * links, bounded by the job's finish; both counted in the phase's own open slots. A started phase is measured at its finish. Greatest lags
 * bound the free float only: with total float what comes before slips along.
 */
export class FloatPass {
  /** Floats of each phase; null for what is finished or has no place. */
  readonly floats: (Floats | null)[];
  private readonly latest: (Latest | undefined)[];
  private readonly visitLatest = new Map<Visit, number>();
  private readonly ends: Float64Array;
  /** Indexes of phases, prerequisites first. */
  private readonly places: Int32Array;

  /**
   * @param sequence phases with prerequisites first
   */
  constructor(
    private readonly state: State,
    sequence: readonly Node[],
  ) {
    const { nodes, jobs } = state.problem;
    this.floats = nodes.map(() => null);
    this.latest = new Array<Latest | undefined>(nodes.length).fill(undefined);
    this.ends = new Float64Array(jobs.length);
    this.places = Int32Array.from(sequence, ({ index }) => index);
  }

  /** Goes over everything. */
  all(): void {
    this.latest.fill(undefined);
    this.floats.fill(null);
    this.visitLatest.clear();
    const { nodes, jobs } = this.state.problem;
    for (let job = 0; job < jobs.length; job++) this.findEnd(job);
    for (let i = this.places.length - 1; i >= 0; i--) this.rate(nodes[this.places[i]!]!);
  }

  /**
   * Goes over what may have changed: phases placed anew, what comes before them, and jobs that end at another time. Only for plans in which
   * everything has its place and no visit is waited for.
   * @returns phases whose floats are not what they were
   */
  some(renewed: ReadonlySet<Node>): Set<Node> {
    const { nodes, phasesOf } = this.state.problem;
    const { places } = this;
    const due = new Uint8Array(nodes.length);
    const jobs = new Set<number>();
    for (const node of renewed) {
      jobs.add(node.jobIndex);
      due[node.index] = 1;
      for (const { from } of node.ins) due[from.index] = 1;
    }
    for (const job of jobs) {
      if (this.findEnd(job)) for (const { index } of phasesOf[job]!) due[index] = 1;
    }
    const changed = new Set<Node>();
    for (let i = places.length - 1; i >= 0; i--) {
      const index = places[i]!;
      if (due[index] === 0) continue;
      const node = nodes[index]!;
      const [latest, floats] = [this.latest[index], this.floats[index]];
      this.rate(node);
      const [later, now] = [this.latest[index], this.floats[index]];
      if (latest?.start !== later?.start || latest?.finish !== later?.finish) {
        for (const { from } of node.ins) due[from.index] = 1;
      }
      if (floats?.total === now?.total && floats?.free === now?.free) this.floats[index] = floats ?? null;
      else changed.add(node);
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
    const placed = this.state.outcomes[node.index];
    if (!placed?.placed) return;
    let finish = this.ends[node.jobIndex]!;
    let start = Infinity;
    let soonFinish = finish;
    let soonStart = start;
    for (const edge of node.outs) {
      const to = this.state.outcomes[edge.to.index];
      const late = this.latest[edge.to.index];
      if (!to?.placed || !edgeBinds(edge)) continue;
      const { link } = edge;
      const ends = toFinish(link.kind);
      const soon = lagBefore(link, ends ? to.finish : to.start, to.hours.own);
      const at = late && lagBefore(link, ends ? late.finish : late.start, to.hours.own);
      if (fromFinish(link.kind)) {
        if (soon < soonFinish) soonFinish = soon;
        if (at !== undefined && at < finish) finish = at;
      } else {
        if (soon < soonStart) soonStart = soon;
        if (at !== undefined && at < start) start = at;
      }
    }
    for (const visit of node.visitsAfter) {
      if (visit.inspection.state.kind === 'passed') continue;
      const at = this.visitLatest.get(visit);
      if (at !== undefined && at < finish) finish = at;
      const soon = this.state.visitOf(visit).start;
      if (soon !== null && soon < soonFinish) soonFinish = soon;
    }
    const last = latestPlace(node, placed, finish, start);
    this.latest[node.index] = last;
    for (const visit of node.visits) this.noteVisit(visit, last.start);
    if (node.finished) return;
    const free =
      soonFinish === finish && soonStart === start ? last : latestPlace(node, placed, soonFinish, soonStart);
    const slack = slip(node, placed, free);
    this.floats[node.index] = {
      total: slip(node, placed, last),
      free: node.ins.some(hasMost) ? this.withinMosts(node, placed, slack) : slack,
    };
  }

  /** The free float that leaves every greatest lag to this phase kept. */
  private withinMosts(node: Node, placed: Placement, slack: SlotCount): SlotCount {
    let least = slack;
    for (const edge of node.ins) {
      const from = this.state.outcomes[edge.from.index];
      if (!hasMost(edge) || !from?.placed || !edgeBinds(edge)) continue;
      while (least > 0 && overrun(edge, from, slipped(node, placed, least))) least--;
    }
    return least;
  }

  /** Latest start of a visit that still ends before a gated phase's latest start. */
  private noteVisit(visit: Visit, phaseStart: Slot): void {
    const planned = this.state.visitOf(visit);
    const length = visit.inspection.visit;
    const at = planned.state === 'booked' ? planned.start : visit.hours.gapBefore(phaseStart, length);
    if (at !== null) this.visitLatest.set(visit, Math.min(this.visitLatest.get(visit) ?? Infinity, at));
  }
}

function hasMost({ link }: Node['ins'][number]): boolean {
  return link.mostLag !== undefined;
}

/** A phase so many of its own open slots later. */
function slipped(node: Node, placed: Placement, slots: SlotCount): Placement {
  const { own } = placed.hours;
  const start = own.at(own.worked(placed.start) + slots) ?? placed.start;
  return { ...placed, start, finish: finishFrom(node, placed.hours, start) ?? placed.finish };
}

/** The latest dates inside the bounds; the planned ones where the hours leave no other. */
function latestPlace(node: Node, placed: Placement, byFinish: number, byStart: number): Latest {
  if (node.started) return { start: placed.start, finish: byFinish as Slot };
  const { hours } = placed;
  let start = latestStart(node, placed, byFinish as Slot);
  if (start !== null && byStart < start) start = snapBack(node, placed, byStart as Slot);
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
  return node.started
    ? own.worked(latest.finish) - own.worked(placed.finish)
    : own.worked(latest.start) - own.worked(placed.start);
}
