import { bestPlace, NO_BOUNDS } from './best-place.js';
import type { Order } from './cycles.js';
import { placeFrozen } from './frozen.js';
import { tooLate, type Late } from './too-late.js';
import type { Bound } from './lower-bounds.js';
import type { Conflict, Reason } from './model.js';
import type { Outcome, Placement } from './outcome.js';
import { finishFrom, placePinned, type FixedPlace } from './pinned.js';
import { isFixed, type CompiledPool, type Edge, type Node, type Problem } from './problem.js';
import type { Ranking } from './rank.js';
import { Reads } from './reads.js';
import { SettlingOrder } from './settling-order.js';
import { slot, type Slot } from './slot.js';
import type { Shortage } from './stock-profile.js';
import { placeFinished, placeStarted } from './started.js';
import { State, type Reservation } from './state.js';
import { FOREVER } from './view.js';
import { Walk } from './walk.js';
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
export class Generator extends Walk {
  readonly state: State;
  readonly reads: Reads;
  /** What facts did to crews. */
  readonly conflicts: Conflict[] = [];
  /** Fixed phases that did not get what was set aside for them. */
  readonly moved = new Set<Node>();
  /** The order in which everything was settled. */
  order = new SettlingOrder();
  /** The order followed from ranks and links alone; otherwise a changed input is planned as a whole. */
  regular = true;
  /** Is shown every place just before it is taken; of a phase placed several times the last counts. */
  watch: ((state: State, node: Node, place: Placement, floors: readonly Bound[]) => void) | undefined;
  /** Phases whose way to a release is being placed. */
  private readonly open = new Set<Node>();

  /**
   * @param loose phases whose crew is not set aside though their start is fixed: it was found that they cannot stay there
   */
  constructor(
    problem: Problem,
    private readonly network: Order,
    ranking: Ranking,
    private readonly impossible: ReadonlySet<Edge>,
    private readonly loose: ReadonlySet<Node>,
  ) {
    super(problem, ranking);
    this.state = new State(problem, this.order);
    this.reads = new Reads(problem.nodes.length);
    this.regular = loose.size === 0 && network.onCycle.size === 0;
    this.state.onReady = this.enqueue;
  }

  /** Places everything. */
  run(): void {
    const { problem, state, order, network } = this;
    const { byRank } = this.ranking;
    for (const node of problem.nodes) if (state.isReady(node)) this.enqueue(node);
    for (const node of problem.nodes) {
      if (node.finished && !state.isSettled(node)) this.settleOnce(node, NO_BOUNDS);
    }
    for (const node of byRank) {
      if (!node.finished && node.started && state.isReady(node)) this.settleOnce(node, NO_BOUNDS);
    }
    for (const node of network.onCycle) {
      if (!node.started) state.settle(node, onCycle(node));
    }
    for (const node of byRank) if (isFixed(node)) this.reserve(node);
    for (const node of byRank) if (node.started) this.settleReleases(node, state.mark());
    this.drain(order);
    for (const node of network.onCycle) {
      if (!state.isSettled(node)) this.settle(node);
      this.drain(order);
    }
    this.regular &&= this.moved.size === 0 && this.conflicts.length === 0;
  }

  /** Settles a block whose phases have been taken out; true when it came out as a block of the same phases, by the rules alone. */
  again(block: number): boolean {
    const { order, state } = this;
    this.reads.begin();
    this.settle(order.heads[block]!);
    const { settled } = state;
    const from = order.startOf(block);
    return (
      this.regular &&
      this.moved.size === 0 &&
      this.conflicts.length === 0 &&
      settled.length === order.endOf(block) - from &&
      settled.every((node, i) => node === order.nodes[from + i])
    );
  }

  isSettled(node: Node): boolean {
    return this.state.isSettled(node);
  }

  isReady(node: Node): boolean {
    return this.state.isReady(node);
  }

  /** Sets the crew of a fixed start aside, so that what is placed before it goes around; returns what it set aside. */
  reserve(node: Node): Reservation | undefined {
    const { state } = this;
    if (state.isSettled(node) || this.loose.has(node)) return undefined;
    const reservation = node.started ? this.underWay(node) : this.promised(node);
    if (reservation) state.reserve(node, reservation);
    return reservation;
  }

  private underWay(node: Node): Reservation {
    const { problem, state } = this;
    const { crewIndex, start: from, finish: to } = placeStarted(problem, node, state.outcomes);
    const free = crewIndex >= 0 && to > from && state.timeline(crewIndex).firstIn(from, to) < 0;
    return { crew: free ? crewIndex : -1, from, to, started: true };
  }

  private promised(node: Node): Reservation | undefined {
    const from = node.phase.facts?.pinnedStart ?? node.phase.commitment!.start;
    if (from < this.problem.input.now) return undefined;
    for (const { crewIndex: crew, hours } of node.choices) {
      const to = finishFrom(node, hours, from) ?? slot(from + 1);
      if (crew >= 0 && this.state.timeline(crew).firstIn(from, to) >= 0) continue;
      return { crew, from, to, started: false };
    }
    return undefined;
  }

  /** Settles one phase whose prerequisites are settled, with the way to the release of what it holds and to what must follow soon. */
  protected settle(node: Node): void {
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
        const kept = this.state.unreserve(node);
        if (kept && !kept.started) this.moved.add(node);
        this.state.settle(node, failed, kept);
        return;
      }
      floors.push({ at: short!.at!, reason: short!.reason });
    }
  }

  private settleOnce(node: Node, floors: readonly Bound[]): void {
    const { state } = this;
    const kept = state.unreserve(node);
    this.busy[node.index] = 1;
    const outcome = this.outcomeOf(node, floors, kept?.crew);
    this.busy[node.index] = 0;
    if (!outcome.placed) this.regular = false;
    else this.watch?.(state, node, outcome, floors);
    const clash = state.settle(node, outcome, kept);
    if (kept && !kept.started && !stays(outcome, kept)) this.moved.add(node);
    if (kept && !(outcome.placed && stays(outcome, kept) && outcome.finish === kept.to)) this.regular = false;
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
    if (!fixed.place.placed && fixed.place.pool !== null && this.settleLoans(fixed.place.pool)) {
      fixed = this.search(node, floors, reserved);
    }
    const { place, conflicts } = fixed;
    if (place.placed) return conflicts.length === 0 ? place : { ...place, conflicts };
    const unplaced = notFound(node, place);
    return { ...unplaced, conflicts: [...unplaced.conflicts, ...conflicts] };
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

  /** Places the way to every phase that must follow this one within a greatest lag; returns the first that comes too late. */
  private settleFollowers(node: Node, givenUp: ReadonlySet<Edge>): Late | undefined {
    for (const edge of node.mosts) {
      if (givenUp.has(edge)) continue;
      this.settleUpTo(edge.to);
      const late = tooLate(this.state, edge);
      if (late) return late;
    }
    return undefined;
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

/** A greatest lag that cannot be kept by starting later: what was tried for its sake is taken back. */
function giveUp(edge: Edge, givenUp: Set<Edge>, floors: Bound[]): void {
  givenUp.add(edge);
  const others = floors.filter(({ reason }) => reason.kind !== 'mostLag' || reason.linkId !== edge.link.id);
  floors.splice(0, floors.length, ...others);
}

const NO_CONFLICTS: readonly Conflict[] = [];
