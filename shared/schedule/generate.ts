import { bestPlace, NO_BOUNDS } from './best-place.js';
import type { Order } from './cycles.js';
import { placeFrozen } from './frozen.js';
import { overrun, startForPoint } from './greatest-lag.js';
import type { Bound } from './lower-bounds.js';
import type { Conflict, Reason } from './model.js';
import type { Outcome, Placement } from './outcome.js';
import { finishFrom, placePinned, type FixedPlace } from './pinned.js';
import { isFixed, type CompiledPool, type Edge, type Node, type Problem } from './problem.js';
import type { Ranking } from './rank.js';
import { RankQueue } from './rank-queue.js';
import { FOREVER, Reads } from './reads.js';
import type { Block, Replay } from './replay.js';
import { slot, type Slot } from './slot.js';
import type { Shortage } from './stock-profile.js';
import { placeFinished, placeStarted } from './started.js';
import { State, type Reservation } from './state.js';
import { hopeless, neverFree, neverReleased, notFound, onCycle } from './unplaced.js';

/**
 * Places everything; again, without setting crews aside for them, when fixed phases turn out not to be able to stay, so that nothing is
 * left standing behind a reservation that nobody uses.
 *
 * @param impossible links whose greatest lag no plan can keep: it is not tried
 */
export function generate(
  problem: Problem,
  order: Order,
  ranking: Ranking,
  impossible: ReadonlySet<Edge>,
  watch?: Generator['watch'],
): Generator {
  const loose = new Set<Node>();
  for (let round = 0; ; round++) {
    const all = round < ROUNDS ? loose : new Set(problem.nodes);
    const generated = new Generator(problem, order, ranking, impossible, all);
    generated.watch = watch;
    generated.run();
    if (generated.moved.size === 0) return generated;
    for (const node of generated.moved) loose.add(node);
  }
}

/** Stock does not last; `at` is when there is enough again, null for never. */
interface Shortfall {
  readonly at: Slot | null;
  readonly reason: Reason;
}

/** After so many rounds nothing is set aside any more. */
const ROUNDS = 4;

/** So often a phase is put off to bring its successors within their greatest lags. */
const PUT_OFF_AT_MOST = 40;

function stays(outcome: Outcome, kept: Reservation): boolean {
  return outcome.placed && outcome.start === kept.from && outcome.crewIndex === kept.crew;
}

/**
 * Serial schedule generation: phases by rank, each placed once, as early as everything already placed allows. Equipment that stays out
 * until another phase finishes is settled as one piece: the way to that phase is placed at once, and if stock does not last so long, all of
 * it is taken back and tried after the shortage. So it is with what must follow within a greatest lag: when it comes too late, all of it is
 * taken back and tried so much later.
 */
export class Generator {
  readonly state: State;
  readonly reads: Reads;
  /** What facts did to crews. */
  readonly conflicts: Conflict[] = [];
  /** Fixed phases that did not get what was set aside for them. */
  readonly moved = new Set<Node>();
  /** What was settled after facts, in one go each. */
  readonly blocks: Block[] = [];
  /** The order followed from ranks and links alone; otherwise a changed input is planned as a whole. */
  regular = true;
  /** Is shown every place just before it is taken; of a phase placed several times the last counts. */
  watch: ((state: State, node: Node, place: Placement, floors: readonly Bound[]) => void) | undefined;
  private queue = new RankQueue();
  /** Phases whose way to a release is being placed. */
  private readonly open = new Set<Node>();
  /** Phases being placed. */
  private readonly busy = new Set<Node>();
  private factsEnd = 0;

  /**
   * @param loose phases whose crew is not set aside though their start is fixed: it was found that they cannot stay there
   */
  constructor(
    private readonly problem: Problem,
    private readonly order: Order,
    private readonly ranking: Ranking,
    private readonly impossible: ReadonlySet<Edge>,
    private readonly loose: ReadonlySet<Node>,
  ) {
    this.state = new State(problem);
    this.reads = new Reads(problem.nodes.length);
    this.regular = loose.size === 0 && order.onCycle.size === 0;
    this.state.onReady = (node) => this.queue.push(this.ranking.rank[node.index]!);
  }

  /** Places everything. */
  run(): void {
    const { byRank } = this.ranking;
    this.queueReady();
    for (const node of this.problem.nodes) {
      if (node.finished && !this.state.isSettled(node)) this.settleOnce(node, NO_BOUNDS);
    }
    for (const node of byRank) {
      if (!node.finished && node.started && this.state.isReady(node)) this.settleOnce(node, NO_BOUNDS);
    }
    for (const node of this.order.onCycle) {
      if (!node.started) this.state.settle(node, onCycle(node));
    }
    for (const node of byRank) if (isFixed(node)) this.reserve(node);
    for (const node of byRank) if (node.started) this.settleReleases(node, this.state.mark());
    this.factsEnd = this.state.mark();
    this.drain();
    for (const node of this.order.onCycle) {
      if (!this.state.isSettled(node)) this.settle(node);
      this.drain();
    }
    this.regular &&= this.moved.size === 0 && this.conflicts.length === 0;
  }

  /**
   * Takes back what was settled from some place on, for a pass over changed input.
   * @returns the blocks taken back, in order; undefined when facts would have to be settled anew
   */
  takeBackTo(mark: number): readonly Block[] | undefined {
    if (mark < this.factsEnd) return undefined;
    let at = this.state.mark();
    let first = this.blocks.length;
    while (at > mark) at -= this.blocks[--first]!.members.length;
    this.state.undoTo(at);
    return this.blocks.splice(first);
  }

  /** Places everything that is not settled, keeping what holds of the pass before. */
  resume(replay: Replay): void {
    this.queue = new RankQueue();
    this.queueReady();
    this.drain(replay);
    this.regular &&= !replay.outOfStep && this.moved.size === 0 && this.conflicts.length === 0;
  }

  private queueReady(): void {
    for (const node of this.problem.nodes) if (this.state.isReady(node)) this.state.onReady(node);
  }

  private drain(replay?: Replay): void {
    const { state } = this;
    for (let next = this.queue.pop(); next !== undefined; next = this.queue.pop()) {
      const head = this.ranking.byRank[next]!;
      if (!state.isReady(head)) continue;
      const mark = state.mark();
      const kept = replay?.kept(head);
      if (kept) {
        this.keep(kept.members, replay!);
        this.blocks.push(kept);
        continue;
      }
      this.reads.begin();
      this.settle(head);
      const members = state.settled.slice(mark);
      this.blocks.push({ head, members });
      if (!replay) continue;
      replay.placed(members, state.outcomes);
      if (replay.outOfStep || !this.regular || this.moved.size > 0) {
        replay.outOfStep = true;
        return;
      }
    }
  }

  /** Settles phases where the pass before had them. */
  private keep(nodes: readonly Node[], replay: Replay): void {
    for (const node of nodes) {
      const kept = this.state.reservationOf(node);
      if (kept) this.state.unreserve(node);
      this.state.settle(node, replay.outcomeOf(node), kept);
    }
  }

  /**
   * Sets the crew of a fixed start aside, so that what is placed before it goes around.
   */
  reserve(node: Node): void {
    const { state } = this;
    if (state.isSettled(node) || this.loose.has(node)) return;
    if (node.started) {
      const { crewIndex, start: from, finish: to } = placeStarted(this.problem, node, state.outcomes);
      const free = crewIndex >= 0 && to > from && state.timeline(crewIndex).firstIn(from, to) < 0;
      state.reserve(node, { crew: free ? crewIndex : -1, from, to, started: true });
      return;
    }
    const { now } = this.problem.input;
    const promised = node.frozen ? node.phase.commitment!.start : undefined;
    const from = node.phase.facts?.pinnedStart ?? promised;
    if (from === undefined || from < now) return;
    for (const { crewIndex: crew, hours } of node.choices) {
      const to = finishFrom(node, hours, from) ?? slot(from + 1);
      if (crew >= 0 && state.timeline(crew).firstIn(from, to) >= 0) continue;
      state.reserve(node, { crew, from, to, started: false });
      return;
    }
  }

  /** Settles one phase whose prerequisites are settled, with the way to the release of what it holds and to what must follow soon. */
  private settle(node: Node): void {
    if (node.holds.length === 0 && node.mosts.length === 0) this.settleOnce(node, NO_BOUNDS);
    else this.settleWithWay(node);
  }

  private settleWithWay(node: Node): void {
    this.settleFreeReleases(node);
    const mark = this.state.mark();
    const floors: Bound[] = [];
    const givenUp = new Set(this.impossible);
    let putOff = 0;
    for (;;) {
      this.settleOnce(node, floors);
      const short = this.settleReleases(node, mark);
      const outcome = this.state.outcomes[node.index];
      if (!outcome?.placed || outcome.state !== 'planned') return;
      const stuck = this.stuckRelease(node);
      if (!short && !stuck) {
        const late = this.settleFollowers(node, givenUp);
        if (!late) return;
        this.state.undoTo(mark);
        if (late.floor !== null && ++putOff <= PUT_OFF_AT_MOST) floors.push(late.floor);
        else giveUp(late.edge, givenUp, floors);
        continue;
      }
      const way = this.state.settled.slice(mark).map((one) => this.state.outcomes[one.index]!);
      const failed = stuck
        ? neverReleased(node, stuck, [...way, this.state.outcomes[stuck.index]!])
        : short!.at === null && neverFree(node, short!.reason);
      this.state.undoTo(mark);
      if (failed) {
        const kept = this.state.reservationOf(node);
        if (kept && !kept.started) this.moved.add(node);
        this.state.unreserve(node);
        this.state.settle(node, failed, kept);
        return;
      }
      floors.push({ at: short!.at!, reason: short!.reason });
    }
  }

  private settleOnce(node: Node, floors: readonly Bound[]): void {
    const { state } = this;
    const kept = state.reservationOf(node);
    if (kept) state.unreserve(node);
    this.busy.add(node);
    const outcome = this.outcomeOf(node, floors, kept?.crew);
    this.busy.delete(node);
    if (!outcome.placed) this.regular = false;
    else this.watch?.(state, node, outcome, floors);
    const clash = state.settle(node, outcome, kept);
    if (kept && !kept.started && !stays(outcome, kept)) this.moved.add(node);
    if (clash >= 0 && outcome.placed) {
      const phaseIds = [this.problem.nodes[clash]!.id, node.id] as const;
      this.conflicts.push({ code: 'crewDoubled', crewId: outcome.crew!.id, phaseIds });
    }
  }

  private outcomeOf(node: Node, floors: readonly Bound[], reserved: number | undefined): Outcome {
    if (node.finished) return placeFinished(this.problem, node);
    if (node.started) return placeStarted(this.problem, node, this.state.outcomes);
    const lost = hopeless(this.state, node);
    if (lost) return lost;
    let fixed = this.search(node, floors, reserved);
    if (!fixed.place.found && fixed.place.pool !== null && this.settleLoans(fixed.place.pool)) {
      fixed = this.search(node, floors, reserved);
    }
    const { place, conflicts } = fixed;
    if (!place.found) {
      const unplaced = notFound(node, place);
      return { ...unplaced, conflicts: [...unplaced.conflicts, ...conflicts] };
    }
    const { crew, crewIndex, hours, start, finish, ready, readyReason, trail, reason } = place;
    const state = 'planned';
    return {
      placed: true,
      state,
      crew,
      crewIndex,
      hours,
      start,
      finish,
      ready,
      readyReason,
      trail,
      reason,
      conflicts,
    };
  }

  private search(node: Node, floors: readonly Bound[], reserved: number | undefined): FixedPlace {
    if (node.pinned) return placePinned(this.state, node, floors, this.reads, reserved);
    if (node.frozen) return placeFrozen(this.state, node, floors, this.reads);
    return { place: bestPlace(this.state, node, node.choices, floors, this.reads), conflicts: NO_CONFLICTS };
  }

  /**
   * Places the way to every phase that releases what this one holds.
   * @returns where to try again when the stock does not last that long
   */
  private settleReleases(node: Node, mark: number): Shortfall | undefined {
    const outcome = this.state.outcomes[node.index];
    if (!outcome?.placed || node.holds.every(({ releaser }) => releaser === node)) return undefined;
    this.open.add(node);
    for (const { releaser } of node.holds) if (releaser !== node) this.settleUpTo(releaser);
    this.open.delete(node);
    for (const { pool } of node.holds) {
      for (const loan of this.state.stock.loansOf(pool)) {
        if (loan.node !== node) continue;
        const short = this.state.stock.shortDuring(loan);
        this.reads.addPools(node, short ? FOREVER : loan.to);
        if (short) return this.shortfall(node, pool, short, mark);
      }
    }
    return undefined;
  }

  /** Stock that comes back only by what this phase itself leads to never comes back for it. */
  private shortfall(node: Node, pool: CompiledPool, short: Shortage, mark: number): Shortfall {
    const reason = this.state.stock.blame(pool, short, node);
    const culprit = reason.releasedBy ?? reason.phaseId;
    const circular = this.state.settled.slice(mark).some(({ id }) => id === culprit);
    return { at: circular || short.to === Infinity ? null : slot(short.to), reason };
  }

  /** The first phase that was to give back what this one holds and has no place. */
  private stuckRelease(node: Node): Node | undefined {
    return node.holds
      .map(({ releaser }) => releaser)
      .find((releaser) => releaser !== node && this.state.outcomes[releaser.index]?.placed === false);
  }

  /**
   * Places the way to every phase that must follow this one within a greatest lag.
   * @returns the first link that is overrun, with the start that would do for it; its floor is null when no later start can help
   */
  private settleFollowers(
    node: Node,
    givenUp: ReadonlySet<Edge>,
  ): { edge: Edge; floor: Bound | null } | undefined {
    for (const edge of node.mosts) {
      if (givenUp.has(edge)) continue;
      this.settleUpTo(edge.to);
      const from = this.state.outcomes[node.index]!;
      const to = this.state.outcomes[edge.to.index];
      const over = from.placed && to?.placed ? overrun(edge, from, to) : undefined;
      if (!over || !from.placed || !to?.placed) continue;
      const at = over.wanted === null ? null : startForPoint(edge, from, over.wanted);
      if (node.pinned || node.frozen || at === null || at <= from.start) return { edge, floor: null };
      const cause = causeOfLateness(to, from, (id) => this.state.outcomes[this.problem.node(id).index]);
      const reason = {
        kind: 'mostLag',
        linkId: edge.link.id,
        phaseId: edge.to.id,
        until: at,
        cause,
      } as const;
      return { edge, floor: { at, reason } };
    }
    return undefined;
  }

  /** Releases that do not wait for this phase are placed before it, so that it knows when they come. */
  private settleFreeReleases(node: Node): void {
    this.busy.add(node);
    for (const { releaser } of node.holds) {
      if (releaser !== node && !this.wayTo(releaser).has(node)) this.settleUpTo(releaser);
    }
    this.busy.delete(node);
  }

  /** A phase and everything it waits for, as far as it is not settled. */
  private wayTo(goal: Node): Set<Node> {
    const wanted = new Set<Node>();
    const path = [goal];
    for (let node = path.pop(); node; node = path.pop()) {
      if (wanted.has(node) || this.state.isSettled(node)) continue;
      wanted.add(node);
      path.push(...node.prerequisites);
    }
    return wanted;
  }

  /** Settles a phase and everything it waits for, best rank first. */
  private settleUpTo(goal: Node): void {
    if (this.state.isSettled(goal)) return;
    const { rank } = this.ranking;
    const list = [...this.wayTo(goal)].sort((a, b) => rank[a.index]! - rank[b.index]!);
    const ready = (one: Node): boolean => this.state.isReady(one) && !this.busy.has(one);
    for (let next = list.find(ready); next; next = list.find(ready)) this.settle(next);
  }

  /** Places the way to the release of what started work has taken from a pool; true when that gave something back. */
  private settleLoans(pool: CompiledPool): boolean {
    this.regular = false;
    let changed = false;
    for (const loan of this.state.stock.openLoans(pool)) {
      if (this.open.has(loan.node) || this.state.isSettled(loan.releaser)) continue;
      this.open.add(loan.node);
      this.settleUpTo(loan.releaser);
      this.open.delete(loan.node);
      changed = true;
    }
    return changed;
  }
}

/**
 * What kept a successor from coming sooner. Links lead back to what they follow; where that is the predecessor itself, its hours are to
 * blame, or those of what runs between.
 */
function causeOfLateness(
  to: Placement,
  from: Placement,
  outcomeOf: (id: string) => Outcome | undefined,
): Reason {
  let at = to;
  for (let { reason } = at; reason.kind === 'link'; { reason } = at) {
    const [last] = at.trail.slice(-1);
    if (last) return last.reason;
    const before = outcomeOf(reason.phaseId);
    if (!before?.placed || before === from) break;
    at = before;
  }
  const { reason, hours, finish } = at;
  return reason.kind === 'link' ? { kind: 'calendar', calendarId: hours.calendarId, until: finish } : reason;
}

/** A greatest lag that cannot be kept by starting later: what was tried for its sake is taken back. */
function giveUp(edge: Edge, givenUp: Set<Edge>, floors: Bound[]): void {
  givenUp.add(edge);
  const others = floors.filter(({ reason }) => reason.kind !== 'mostLag' || reason.linkId !== edge.link.id);
  floors.splice(0, floors.length, ...others);
}

const NO_CONFLICTS: readonly Conflict[] = [];
