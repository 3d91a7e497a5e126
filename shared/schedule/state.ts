import { CrewTimeline } from './crew-timeline.js';
import { dependents, prerequisites } from './dependencies.js';
import type { Outcome } from './outcome.js';
import type { Node, Problem, Visit } from './problem.js';
import type { Slot } from './slot.js';
import { Stock, type Loan } from './stock.js';
import { planVisit, type VisitOutcome } from './visits.js';

/** What is set aside for a phase whose start is fixed. */
export interface Reservation {
  readonly crewId: string | null;
  readonly from: Slot;
  readonly to: Slot;
  readonly started: boolean;
}

/** Everything that changes while a plan is generated; each settling can be undone, last first. */
export class State {
  readonly outcomes: (Outcome | undefined)[];
  readonly stock: Stock;
  /** Phases whose prerequisites have just all been settled are handed to this. */
  onReady: (node: Node) => void = () => {};
  private readonly reserved = new Map<number, { kept: Reservation; loans: Loan[] }>();
  private readonly waiting: number[];
  private readonly crews = new Map<string, CrewTimeline>();
  private readonly visits: (VisitOutcome | undefined)[];
  private readonly loansBy = new Map<Node, Loan[]>();
  private readonly journal: { node: Node; undo: () => void }[] = [];

  constructor(readonly problem: Problem) {
    this.outcomes = problem.nodes.map(() => undefined);
    this.visits = problem.visits.map(() => undefined);
    this.waiting = problem.nodes.map((node) => prerequisites(node).length);
    this.stock = new Stock(problem);
    for (const crew of problem.crews)
      this.crews.set(crew.id, new CrewTimeline(problem.calendar(crew.calendarId)));
  }

  timeline(crewId: string): CrewTimeline {
    return this.crews.get(crewId)!;
  }

  isSettled(node: Node): boolean {
    return this.outcomes[node.index] !== undefined;
  }

  /** Whether everything a phase waits for is settled and it is not. */
  isReady(node: Node): boolean {
    return this.waiting[node.index] === 0 && !this.isSettled(node);
  }

  /** The visit as placed; only asked once the phases before it are settled. */
  visitOf(visit: Visit): VisitOutcome {
    return (this.visits[visit.index] ??= planVisit(visit, this.outcomes, this.problem.input.now));
  }

  /** Sets crew and equipment aside for a fixed or actual start, until the phase is settled. */
  reserve(node: Node, kept: Reservation): void {
    const { crewId, from, to } = kept;
    if (crewId !== null) this.timeline(crewId).take(from, to, node.index);
    const loans = kept.started
      ? this.stock.lend(node, from, to, this.outcomes)
      : this.stock.promise(node, from, to);
    this.reserved.set(node.index, { kept, loans });
  }

  /** What is set aside for a phase. */
  reservationOf(node: Node): Reservation | undefined {
    return this.reserved.get(node.index)?.kept;
  }

  /** Gives up what was set aside; returns how to set it aside again. */
  unreserve(node: Node): () => void {
    const entry = this.reserved.get(node.index);
    if (!entry) return () => {};
    if (entry.kept.crewId !== null) this.timeline(entry.kept.crewId).release(node.index);
    for (const loan of entry.loans) this.stock.takeBack(loan);
    this.reserved.delete(node.index);
    return () => this.reserve(node, entry.kept);
  }

  /**
   * Writes down where a phase sits and tells those that wait.
   * @returns index of a phase that has the crew at the same time, which only facts can bring about
   */
  settle(node: Node, outcome: Outcome, restore: () => void = () => {}): number | undefined {
    this.outcomes[node.index] = outcome;
    let clash: number | undefined;
    let loans: Loan[] = [];
    const ended: { loan: Loan }[] = [];
    if (outcome.placed) {
      const { crew, start, finish } = outcome;
      const past = finish <= this.problem.input.now;
      if (crew && node.length > 0 && !past) clash = this.timeline(crew.id).take(start, finish, node.index);
      loans = this.stock.lend(node, start, finish, this.outcomes);
      for (const loan of loans) if (loan.to === Infinity) this.watch(loan);
      for (const loan of this.loansBy.get(node) ?? []) {
        if (loan.to !== Infinity) continue;
        this.stock.endLoan(loan, finish);
        ended.push({ loan });
      }
    }
    for (const after of dependents(node)) if (--this.waiting[after.index]! === 0) this.onReady(after);
    this.journal.push({
      node,
      undo: () => {
        for (const after of dependents(node)) this.waiting[after.index]!++;
        for (const { loan } of ended) this.stock.endLoan(loan, Infinity);
        for (const loan of loans) this.unwatch(loan);
        if (outcome.placed && outcome.crew) this.timeline(outcome.crew.id).release(node.index);
        for (const visit of node.visitsAfter) this.visits[visit.index] = undefined;
        this.outcomes[node.index] = undefined;
        restore();
      },
    });
    return clash;
  }

  /** How much is settled, to come back to. */
  mark(): number {
    return this.journal.length;
  }

  /** What has been settled since `mark`, in order. */
  since(mark: number): Node[] {
    return this.journal.slice(mark).map(({ node }) => node);
  }

  /** Undoes everything settled since `mark`. */
  undoTo(mark: number): void {
    while (this.journal.length > mark) this.journal.pop()!.undo();
  }

  private watch(loan: Loan): void {
    const list = this.loansBy.get(loan.releaser) ?? [];
    list.push(loan);
    this.loansBy.set(loan.releaser, list);
  }

  private unwatch(loan: Loan): void {
    this.stock.takeBack(loan);
    const list = this.loansBy.get(loan.releaser);
    const at = list?.indexOf(loan) ?? -1;
    if (list && at >= 0) list.splice(at, 1);
  }
}
