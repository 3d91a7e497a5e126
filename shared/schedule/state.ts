import { CrewTimeline } from './crew-timeline.js';
import { subtractIntervals } from './intervals.js';
import type { Interval } from './model.js';
import type { Outcome } from './outcome.js';
import type { Node, Problem, Visit } from './problem.js';
import type { Slot } from './slot.js';
import { Stock, type Loan } from './stock.js';
import { planVisit, visitWithin, type VisitOutcome } from './visits.js';

/** What is set aside for a phase whose start is fixed. */
export interface Reservation {
  /** Place of the crew in id order; -1 for none. */
  readonly crew: number;
  readonly from: Slot;
  readonly to: Slot;
  readonly started: boolean;
}

const NO_LOANS: Loan[] = [];

/** Everything that changes while a plan is generated; each settling can be undone, last first. */
export class State {
  readonly outcomes: (Outcome | undefined)[];
  readonly stock: Stock;
  /** Phases in the order in which they were settled. */
  readonly settled: Node[] = [];
  /** Phases whose prerequisites have just all been settled are handed to this. */
  onReady: (node: Node) => void = () => {};
  private readonly waiting: Int32Array;
  private readonly timelines: readonly CrewTimeline[];
  private readonly visits: (VisitOutcome | undefined)[];
  private readonly reservations: (Reservation | undefined)[];
  /** What each phase has taken, set aside or for good. */
  private readonly loans: Loan[][];
  /** Loans that a phase ends, and those that wait for it. */
  private readonly awaited: (Loan[] | undefined)[];
  /** What settling a phase gave up or moved, to be put back. */
  private readonly before: ({ kept: Reservation | undefined; visits: Before[] } | undefined)[];

  constructor(readonly problem: Problem) {
    const { nodes } = problem;
    this.outcomes = new Array<Outcome | undefined>(nodes.length).fill(undefined);
    this.visits = new Array<VisitOutcome | undefined>(problem.visits.length).fill(undefined);
    this.reservations = new Array<Reservation | undefined>(nodes.length).fill(undefined);
    this.loans = new Array<Loan[]>(nodes.length).fill(NO_LOANS);
    this.awaited = new Array<Loan[] | undefined>(nodes.length).fill(undefined);
    this.before = new Array<undefined>(nodes.length).fill(undefined);
    this.waiting = new Int32Array(nodes.length);
    for (const { index, prerequisites } of nodes) this.waiting[index] = prerequisites.length;
    this.stock = new Stock(problem);
    this.timelines = problem.crews.map((crew) => new CrewTimeline(problem.calendar(crew.calendarId)));
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
  reserve(node: Node, kept: Reservation): void {
    const { crew, from, to } = kept;
    if (crew >= 0) this.timeline(crew).take(from, to, node.index);
    this.loans[node.index] = kept.started
      ? this.stock.lend(node, from, to, this.outcomes)
      : this.stock.promise(node, from, to);
    this.reservations[node.index] = kept;
  }

  /** What is set aside for a phase. */
  reservationOf(node: Node): Reservation | undefined {
    return this.reservations[node.index];
  }

  /** Gives up what was set aside. */
  unreserve(node: Node): void {
    const kept = this.reservations[node.index];
    if (!kept) return;
    if (kept.crew >= 0) this.timeline(kept.crew).release(kept.from, kept.to, node.index);
    for (const loan of this.loans[node.index]!) this.stock.takeBack(loan);
    this.loans[node.index] = NO_LOANS;
    this.reservations[node.index] = undefined;
  }

  /**
   * Writes down where a phase sits and tells those that wait.
   * @param kept what was set aside for it and is set aside again when this is undone
   * @returns index of a phase that has the crew at the same time, which only facts can bring about; -1 for none
   */
  settle(node: Node, outcome: Outcome, kept?: Reservation): number {
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
      const later = visitWithin(visit, planned, node.id, start, Math.min(...gated), this.problem.input.now);
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
    const { index, dependents } = node;
    const outcome = this.outcomes[index]!;
    for (let i = 0; i < dependents.length; i++) this.waiting[dependents[i]!.index]!++;
    if (outcome.placed) {
      const awaited = this.awaited[index];
      if (awaited) for (const loan of awaited) this.stock.endLoan(loan, Infinity);
      if (node.holds.length > 0) this.takeBack(index);
      if (outcome.crewIndex >= 0)
        this.timeline(outcome.crewIndex).release(outcome.start, outcome.finish, index);
    }
    for (const visit of node.visitsAfter) this.visits[visit.index] = undefined;
    this.outcomes[index] = undefined;
    const before = this.before[index];
    if (!before) return;
    for (const { visit, planned } of before.visits) this.visits[visit.index] = planned;
    if (before.kept) this.reserve(node, before.kept);
  }

  private takeBack(index: number): void {
    for (const loan of this.loans[index]!) {
      this.stock.takeBack(loan);
      const list = this.awaited[loan.releaser.index];
      const at = list?.lastIndexOf(loan) ?? -1;
      if (list && at >= 0) list.splice(at, 1);
    }
    this.loans[index] = NO_LOANS;
  }
}

/** A visit before it was moved. */
interface Before {
  readonly visit: Visit;
  readonly planned: VisitOutcome;
}

const NO_VISITS: Before[] = [];

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
