import { bestPlace, crewChoices, preferredCrew } from './best-place.js';
import type { Order } from './cycles.js';
import { hasFinished, hasStarted, prerequisites } from './dependencies.js';
import { placeFrozen } from './frozen.js';
import type { Bound } from './lower-bounds.js';
import type { Conflict, Reason } from './model.js';
import type { Outcome } from './outcome.js';
import { finishFrom, placePinned, type FixedPlace } from './pinned.js';
import type { Node, Problem } from './problem.js';
import { isFrozen, isPinned, rankPhases } from './rank.js';
import { RankQueue } from './rank-queue.js';
import { slot, type Slot } from './slot.js';
import type { Shortage } from './stock-profile.js';
import { placeFinished, placeStarted } from './started.js';
import { State, type Reservation } from './state.js';
import { hopeless, neverFree, neverReleased, notFound, onCycle } from './unplaced.js';

/** Everything placed, what facts did to crews, and fixed phases that did not get what was set aside for them. */
export interface Generated {
  readonly state: State;
  readonly conflicts: readonly Conflict[];
  readonly moved: ReadonlySet<Node>;
}

/**
 * Places everything; again, without setting crews aside for them, when fixed phases turn out not to be able to stay, so that nothing is
 * left standing behind a reservation that nobody uses.
 */
export function generate(problem: Problem, order: Order): Generated {
  const loose = new Set<Node>();
  for (let round = 0; ; round++) {
    const all = round < ROUNDS ? loose : new Set(problem.nodes);
    const generated = new Generator(problem, order, all).run();
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

function stays(outcome: Outcome, kept: Reservation): boolean {
  return outcome.placed && outcome.start === kept.from && (outcome.crew?.id ?? null) === kept.crewId;
}

/**
 * Serial schedule generation: phases by rank, each placed once, as early as everything already placed allows. Equipment that stays out
 * until another phase finishes is settled as one piece: the way to that phase is placed at once, and if stock does not last so long, all of
 * it is taken back and tried after the shortage.
 */
class Generator {
  private readonly state: State;
  private readonly rank: readonly number[];
  private readonly byRank: Node[] = [];
  private readonly queue = new RankQueue();
  /** Phases whose way to a release is being placed. */
  private readonly open = new Set<Node>();
  /** Phases being placed. */
  private readonly busy = new Set<Node>();
  private readonly crewConflicts: Conflict[] = [];
  private readonly moved = new Set<Node>();

  /**
   * @param loose phases whose crew is not set aside though their start is fixed: it was found that they cannot stay there
   */
  constructor(
    private readonly problem: Problem,
    private readonly order: Order,
    private readonly loose: ReadonlySet<Node>,
  ) {
    this.state = new State(problem);
    this.rank = rankPhases(problem, order.sequence);
    for (const node of problem.nodes) this.byRank[this.rank[node.index]!] = node;
    this.state.onReady = (node) => this.queue.push(this.rank[node.index]!);
  }

  /** Places everything. */
  run(): Generated {
    for (const node of this.problem.nodes) if (this.state.isReady(node)) this.state.onReady(node);
    for (const node of this.problem.nodes) {
      if (hasFinished(node) && !this.state.isSettled(node)) this.settleOnce(node, []);
    }
    for (const node of this.byRank) {
      if (!hasFinished(node) && hasStarted(node) && this.state.isReady(node)) this.settleOnce(node, []);
    }
    for (const node of this.order.onCycle) {
      if (!hasStarted(node)) this.state.settle(node, onCycle(node));
    }
    for (const node of this.byRank) this.reserve(node);
    for (const node of this.byRank) if (hasStarted(node)) this.settleReleases(node, this.state.mark());
    this.drain();
    for (const node of this.order.onCycle) {
      if (!this.state.isSettled(node)) this.settle(node);
      this.drain();
    }
    return { state: this.state, conflicts: this.crewConflicts, moved: this.moved };
  }

  private drain(): void {
    for (let next = this.queue.pop(); next !== undefined; next = this.queue.pop()) {
      const node = this.byRank[next]!;
      if (this.state.isReady(node)) this.settle(node);
    }
  }

  /** Sets the crew of a fixed start aside, so that what is placed before it goes around. */
  private reserve(node: Node): void {
    const { state } = this;
    if (state.isSettled(node) || this.loose.has(node)) return;
    if (hasStarted(node)) {
      const { crew, start: from, finish: to } = placeStarted(this.problem, node, state.outcomes);
      const free = crew && to > from && !state.timeline(crew.id).firstIn(from, to);
      state.reserve(node, { crewId: free ? crew.id : null, from, to, started: true });
      return;
    }
    const { now } = this.problem.input;
    const promised = isFrozen(node, this.problem.input) ? node.phase.commitment!.start : undefined;
    const from = node.phase.facts?.pinnedStart ?? promised;
    if (from === undefined || from < now) return;
    const wanted = preferredCrew(node);
    const crews = [...node.crews].sort((a, b) => Number(b.id === wanted) - Number(a.id === wanted));
    for (const crew of node.needsCrew ? crews : [null]) {
      const to = finishFrom(node, this.problem.hoursOf(node, crew), from) ?? slot(from + 1);
      if (crew && state.timeline(crew.id).firstIn(from, to)) continue;
      state.reserve(node, { crewId: crew?.id ?? null, from, to, started: false });
      return;
    }
  }

  /** Settles one phase whose prerequisites are settled, with the way to the release of what it holds. */
  private settle(node: Node): void {
    this.settleFreeReleases(node);
    const mark = this.state.mark();
    const floors: Bound[] = [];
    for (;;) {
      this.settleOnce(node, floors);
      const short = this.settleReleases(node, mark);
      const outcome = this.state.outcomes[node.index];
      if (!outcome?.placed || outcome.state !== 'planned') return;
      const stuck = this.stuckRelease(node);
      if (!short && !stuck) return;
      const way = this.state.since(mark).map((one) => this.state.outcomes[one.index]!);
      const failed = stuck
        ? neverReleased(node, stuck, [...way, this.state.outcomes[stuck.index]!])
        : short!.at === null && neverFree(node, short!.reason);
      this.state.undoTo(mark);
      if (failed) {
        const kept = this.state.reservationOf(node);
        if (kept && !kept.started) this.moved.add(node);
        this.state.settle(node, failed, this.state.unreserve(node));
        return;
      }
      floors.push({ at: short!.at!, reason: short!.reason });
    }
  }

  private settleOnce(node: Node, floors: readonly Bound[]): void {
    const kept = this.state.reservationOf(node);
    const restore = this.state.unreserve(node);
    this.busy.add(node);
    const outcome = this.outcomeOf(node, floors, kept?.crewId ?? undefined);
    this.busy.delete(node);
    const clash = this.state.settle(node, outcome, restore);
    if (kept && !kept.started && !stays(outcome, kept)) this.moved.add(node);
    if (clash !== undefined && outcome.placed) {
      const phaseIds = [this.problem.nodes[clash]!.id, node.id] as const;
      this.crewConflicts.push({ code: 'crewDoubled', crewId: outcome.crew!.id, phaseIds });
    }
  }

  private outcomeOf(node: Node, floors: readonly Bound[], reserved: string | undefined): Outcome {
    if (hasFinished(node)) return placeFinished(this.problem, node);
    if (hasStarted(node)) return placeStarted(this.problem, node, this.state.outcomes);
    const lost = hopeless(this.state, node);
    if (lost) return lost;
    let fixed = this.search(node, floors, reserved);
    if (!fixed.place.found && fixed.place.poolId !== null && this.settleLoans(fixed.place.poolId)) {
      fixed = this.search(node, floors, reserved);
    }
    const { place, conflicts } = fixed;
    if (!place.found) {
      const unplaced = notFound(this.state, node, place);
      return { ...unplaced, conflicts: [...unplaced.conflicts, ...conflicts] };
    }
    const { crew, hours, start, finish, ready, readyReason, trail, reason } = place;
    const state = 'planned';
    return { placed: true, state, crew, hours, start, finish, ready, readyReason, trail, reason, conflicts };
  }

  private search(node: Node, floors: readonly Bound[], reserved: string | undefined): FixedPlace {
    if (isPinned(node)) return placePinned(this.state, node, floors, reserved);
    if (isFrozen(node, this.problem.input)) return placeFrozen(this.state, node, floors);
    return { place: bestPlace(this.state, node, crewChoices(node), floors), conflicts: [] };
  }

  /**
   * Places the way to every phase that releases what this one holds.
   * @returns where to try again when the stock does not last that long
   */
  private settleReleases(node: Node, mark: number): Shortfall | undefined {
    const outcome = this.state.outcomes[node.index];
    const holds = node.phase.holds ?? [];
    if (!outcome?.placed || holds.every((hold) => hold.untilPhaseId === undefined)) return undefined;
    this.open.add(node);
    for (const { untilPhaseId } of holds) {
      if (untilPhaseId !== undefined) this.settleUpTo(this.problem.node(untilPhaseId));
    }
    this.open.delete(node);
    for (const { poolId } of holds) {
      for (const loan of this.state.stock.loansOf(poolId)) {
        const short = loan.node === node ? this.state.stock.shortDuring(loan) : undefined;
        if (short) return this.shortfall(node, poolId, short, mark);
      }
    }
    return undefined;
  }

  /** Stock that comes back only by what this phase itself leads to never comes back for it. */
  private shortfall(node: Node, poolId: string, short: Shortage, mark: number): Shortfall {
    const reason = this.state.stock.blame(poolId, short, node);
    const since = new Set(this.state.since(mark).map(({ id }) => id));
    const circular = since.has(reason.releasedBy ?? reason.phaseId);
    return { at: circular || short.to === Infinity ? null : slot(short.to), reason };
  }

  /** The first phase that was to give back what this one holds and has no place. */
  private stuckRelease(node: Node): Node | undefined {
    return (node.phase.holds ?? [])
      .filter(({ untilPhaseId }) => untilPhaseId !== undefined)
      .map(({ untilPhaseId }) => this.problem.node(untilPhaseId!))
      .find((releaser) => this.state.outcomes[releaser.index]?.placed === false);
  }

  /** Releases that do not wait for this phase are placed before it, so that it knows when they come. */
  private settleFreeReleases(node: Node): void {
    this.busy.add(node);
    for (const { untilPhaseId } of node.phase.holds ?? []) {
      if (untilPhaseId === undefined) continue;
      const goal = this.problem.node(untilPhaseId);
      if (!this.wayTo(goal).has(node)) this.settleUpTo(goal);
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
      path.push(...prerequisites(node));
    }
    return wanted;
  }

  /** Settles a phase and everything it waits for, best rank first. */
  private settleUpTo(goal: Node): void {
    const list = [...this.wayTo(goal)].sort((a, b) => this.rank[a.index]! - this.rank[b.index]!);
    const ready = (one: Node): boolean => this.state.isReady(one) && !this.busy.has(one);
    for (let next = list.find(ready); next; next = list.find(ready)) this.settle(next);
  }

  /** Places the way to the release of what started work has taken from a pool; true when that gave something back. */
  private settleLoans(poolId: string): boolean {
    let changed = false;
    for (const loan of this.state.stock.openLoans(poolId)) {
      if (this.open.has(loan.node) || this.state.isSettled(loan.releaser)) continue;
      this.open.add(loan.node);
      this.settleUpTo(loan.releaser);
      this.open.delete(loan.node);
      changed = true;
    }
    return changed;
  }
}
