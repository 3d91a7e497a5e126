import { CrewTimeline } from './crew-timeline.js';
import { subtractIntervals } from './intervals.js';
import type { Interval } from './model.js';
import type { Outcome } from './outcome.js';
import { PoolTurns } from './pool-turns.js';
import type { Node, Problem, Visit } from './problem.js';
import type { Slot } from './slot.js';
import { Stock, type Loan } from './stock.js';
import type { SettlingOrder } from './settling-order.js';
import { FOREVER, View } from './view.js';
import { planVisit, visitWithin, type VisitOutcome } from './visits.js';

/** What is set aside for a phase whose start is fixed. */
export interface Reservation {
  /** Place of the crew in id order; -1 for none. */
  readonly crew: number;
  readonly from: Slot;
  readonly to: Slot;
  readonly started: boolean;
}

/** A reservation with the equipment that could be had for it. */
interface Kept extends Reservation {
  readonly loans: Loan[];
}

const NO_LOANS: Loan[] = [];

/** Everything that changes while a plan is generated; each settling can be undone, last first. */
export class State {
  readonly outcomes: (Outcome | undefined)[];
  readonly stock: Stock;
  /** Phases in the order in which they were settled; those of the block alone where a pass is gone over again. */
  settled: Node[];
  /** Phases whose prerequisites have just all been settled are handed to this. */
  onReady: (node: Node) => void = TELL_NOBODY;
  private readonly waiting: Int32Array;
  private readonly timelines: readonly CrewTimeline[];
  private readonly visits: (VisitOutcome | undefined)[];
  private readonly reservations: (Kept | undefined)[];
  private readonly view: View;
  /** What each phase has taken for good. */
  private readonly loans: Loan[][];
  /** Loans that a phase ends, and those that wait for it. */
  private readonly awaited: (Loan[] | undefined)[];
  private readonly turns: PoolTurns;
  /** What settling a phase gave up or moved, to be put back. */
  private readonly before: ({ kept: Kept | undefined; visits: Before[] } | undefined)[];

  /**
   * @param order is written as phases are settled
   */
  constructor(
    readonly problem: Problem,
    order: SettlingOrder,
  ) {
    const { nodes } = problem;
    this.settled = order.nodes;
    this.view = new View(nodes.length);
    this.outcomes = new Array<Outcome | undefined>(nodes.length).fill(undefined);
    this.visits = new Array<VisitOutcome | undefined>(problem.visits.length).fill(undefined);
    this.reservations = new Array<Kept | undefined>(nodes.length).fill(undefined);
    this.loans = new Array<Loan[]>(nodes.length).fill(NO_LOANS);
    this.awaited = new Array<Loan[] | undefined>(nodes.length).fill(undefined);
    this.before = new Array<undefined>(nodes.length).fill(undefined);
    this.waiting = new Int32Array(nodes.length);
    for (const { index, prerequisites } of nodes) this.waiting[index] = prerequisites.length;
    this.stock = new Stock(problem);
    this.turns = new PoolTurns(problem, this.stock, {
      loans: (index) => this.loans[index]!,
      promised: (index) => this.before[index]?.kept?.loans ?? NO_LOANS,
    });
    this.timelines = problem.crews.map(
      ({ calendarId }) => new CrewTimeline(problem.calendar(calendarId), this.view),
    );
  }

  /** What a crew, by its place in id order, is busy with. */
  timeline(crew: number): CrewTimeline {
    return this.timelines[crew]!;
  }

  isSettled(node: Node): boolean {
    return this.outcomes[node.index] !== undefined;
  }

  /** Whether everything a phase waits for is settled and it is not. */
  isReady(node: Node): boolean {
    return this.waiting[node.index] === 0 && this.outcomes[node.index] === undefined;
  }

  /** The visit as placed; only asked once the phases before it are settled. */
  visitOf(visit: Visit): VisitOutcome {
    return (this.visits[visit.index] ??= planVisit(visit, this.outcomes, this.problem.input.now));
  }

  /** Sets crew and equipment aside for a fixed or actual start, until the phase is settled. */
  reserve(node: Node, { crew, from, to, started }: Reservation): void {
    if (crew >= 0) this.timeline(crew).take(from, to, node.index);
    const loans = started
      ? this.stock.lend(node, from, to, this.outcomes)
      : this.stock.promise(node, from, to);
    this.view.since[node.index] = FROM_THE_BEGINNING;
    this.reservations[node.index] = { crew, from, to, started, loans };
  }

  /** Gives up what was set aside, and returns it. */
  unreserve(node: Node): Kept | undefined {
    const kept = this.reservations[node.index];
    if (!kept) return undefined;
    if (kept.crew >= 0) this.timeline(kept.crew).release(kept.from, kept.to, node.index);
    for (const loan of kept.loans) this.stock.takeBack(loan);
    this.reservations[node.index] = undefined;
    return kept;
  }

  /**
   * Writes down where a phase sits and tells those that wait.
   * @param kept what was set aside for it and is set aside again when this is undone
   * @returns index of a phase that has the crew at the same time, which only facts can bring about; -1 for none
   */
  settle(node: Node, outcome: Outcome, kept?: Kept): number {
    const { index } = node;
    this.outcomes[index] = outcome;
    this.settled.push(node);
    let clash = -1;
    let visits = NO_VISITS;
    if (outcome.placed) {
      const { crewIndex, start, finish } = outcome;
      const past = finish <= this.problem.input.now;
      if (crewIndex >= 0 && node.length > 0 && !past) {
        const timeline = this.timeline(crewIndex);
        if (letsCrewGo(node)) {
          for (const { from, to } of crewPieces(node, start, finish)) timeline.take(from, to, index);
        } else clash = timeline.take(start, finish, index);
      }
      if (node.holds.length > 0) this.lend(node, start, finish);
      const awaited = this.awaited[index];
      if (awaited) for (const loan of awaited) this.stock.endLoan(loan, finish);
      if (node.visits.length > 0 && !node.started) visits = this.keepValid(node, start);
    }
    this.before[index] = kept || visits !== NO_VISITS ? { kept, visits } : undefined;
    const { dependents } = node;
    for (let i = 0; i < dependents.length; i++) {
      const after = dependents[i]!;
      if (--this.waiting[after.index]! === 0) this.onReady(after);
    }
    return clash;
  }

  private lend(node: Node, start: Slot, finish: Slot): void {
    const loans = this.stock.lend(node, start, finish, this.outcomes);
    this.loans[node.index] = loans;
    for (const loan of loans) if (loan.to === Infinity) (this.awaited[loan.releaser.index] ??= []).push(loan);
  }

  /** Moves a visit that would lose its validity before the phase that waits for it, as far as those placed before let it. */
  private keepValid(node: Node, start: Slot): Before[] {
    const moved: Before[] = [];
    for (const visit of node.visits) {
      if (visit.inspection.validFor === undefined) continue;
      const planned = this.visitOf(visit);
      const gated = visit.gated.flatMap((one) => {
        const outcome = this.outcomes[one.index];
        return outcome?.placed && !one.started ? [outcome.start] : [];
      });
      const later = visitWithin(visit, planned, node.id, start, Math.min(...gated));
      if (!later) continue;
      moved.push({ visit, planned });
      this.visits[visit.index] = later;
    }
    return moved.length > 0 ? moved : NO_VISITS;
  }

  /** How much is settled, to come back to. */
  mark(): number {
    return this.settled.length;
  }

  /** Undoes everything settled since `mark`. */
  undoTo(mark: number): void {
    while (this.settled.length > mark) this.undo(this.settled.pop()!);
  }

  private undo(node: Node): void {
    const { index } = node;
    const awaited = this.awaited[index];
    if (awaited && this.outcomes[index]!.placed)
      for (const loan of awaited) this.stock.endLoan(loan, Infinity);
    for (const loan of this.loans[index]!) this.stock.takeBack(loan);
    this.clear(node);
    const before = this.before[index];
    if (!before) return;
    for (const { visit, planned } of before.visits) this.visits[visit.index] = planned;
    if (before.kept) this.reserve(node, before.kept);
  }

  /** As if a phase had no place, but for stock. */
  private clear(node: Node): void {
    const { index, dependents } = node;
    const outcome = this.outcomes[index]!;
    for (let i = 0; i < dependents.length; i++) this.waiting[dependents[i]!.index]!++;
    if (outcome.placed && outcome.crewIndex >= 0)
      this.timeline(outcome.crewIndex).release(outcome.start, outcome.finish, index);
    for (const visit of node.visitsAfter) this.visits[visit.index] = undefined;
    for (const loan of this.loans[index]!) {
      const list = this.awaited[loan.releaser.index];
      const at = list?.lastIndexOf(loan) ?? -1;
      if (list && at >= 0) list.splice(at, 1);
    }
    this.loans[index] = NO_LOANS;
    this.outcomes[index] = undefined;
  }

  /** Gets ready for going over what is settled again, in an order that differs at most in where free phases come in it. */
  goOver(order: SettlingOrder): void {
    const { since } = this.view;
    this.onReady = TELL_NOBODY;
    this.turns.start(order);
    for (const node of order.nodes) {
      if (since[node.index] !== FROM_THE_BEGINNING) since[node.index] = this.turns.placeOf(node);
    }
  }

  /**
   * Takes a fixed phase out that is settled, with what was set aside for it.
   * @returns what that was
   */
  loosen(node: Node): Kept | undefined {
    this.clear(node);
    this.restore(node);
    this.view.since[node.index] = this.turns.placeOf(node);
    return this.unreserve(node);
  }

  /** Nothing is seen but what comes before a place in the order. */
  seeUntil(place: number): void {
    this.view.until = place;
  }

  /** Takes a block out of the places it has, and leaves everything as it is when the block comes to be settled. */
  reopen(order: SettlingOrder, from: number, to: number): void {
    this.settled = [];
    this.view.until = to;
    this.turns.open(order, from, to);
    for (let i = to - 1; i >= from; i--) {
      const node = order.nodes[i]!;
      if (!this.isSettled(node)) continue;
      this.clear(node);
      this.awaited[node.index] = undefined;
      this.restore(node);
    }
  }

  /** Notes that a block has been settled again. */
  close(order: SettlingOrder, from: number, to: number): void {
    this.turns.close(order, from, to);
  }

  /** Phases that have lost their crew to others since this was asked last. */
  takeOusted(): readonly number[] {
    const { ousted } = this.view;
    if (ousted.size === 0) return NOBODY;
    const indexes = [...ousted];
    ousted.clear();
    return indexes;
  }

  /** Everything that is placed is seen again, and has what it holds. */
  seeAll(): void {
    this.turns.finish();
    this.view.until = FOREVER;
  }

  /** Sets aside again what was set aside for a phase before it was settled. */
  private restore({ index }: Node): void {
    const kept = this.before[index]?.kept;
    if (!kept) return;
    if (kept.crew >= 0) this.timeline(kept.crew).take(kept.from, kept.to, index);
    this.reservations[index] = kept;
  }
}

const TELL_NOBODY = (): void => {};

/** Before any place in the order. */
const FROM_THE_BEGINNING = -1;

/** A visit before it was moved. */
interface Before {
  readonly visit: Visit;
  readonly planned: VisitOutcome;
}

const NO_VISITS: Before[] = [];
const NOBODY: readonly number[] = [];

/** Whether a phase lets its crew do other work while weather pauses it. */
export function letsCrewGo({ phase, weather, started }: Node): boolean {
  return (
    phase.keepsCrew === false &&
    weather !== null &&
    !started &&
    phase.duration.kind === 'work' &&
    phase.duration.mode === 'interruptible'
  );
}

/** When a phase that lets its crew go has it: from start to finish less the weather holds. */
function crewPieces(node: Node, start: Slot, finish: Slot): Interval[] {
  return subtractIntervals([{ from: start, to: finish }], node.weather!.closed);
}
