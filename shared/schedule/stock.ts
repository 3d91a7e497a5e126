import { LONG_AGO } from './link-lag.js';
import type { Reason } from './model.js';
import type { Outcome } from './outcome.js';
import type { CompiledPool, Node, Problem } from './problem.js';
import { aheadOf } from './rank.js';
import { slot, type Slot } from './slot.js';
import { StockProfile, type Shortage } from './stock-profile.js';

/** Equipment out with a phase. */
export interface Loan {
  readonly node: Node;
  readonly pool: CompiledPool;
  readonly quantity: number;
  /** The phase at whose finish it comes back. */
  readonly releaser: Node;
  readonly from: Slot;
  /** Finish of the phase itself: it comes back no sooner. */
  readonly least: Slot;
  /** Infinity while the releaser has no place yet. */
  to: number;
}

/** All equipment pools and what is out of them. */
export class Stock {
  private readonly profiles: readonly StockProfile[];
  private readonly loans: readonly Loan[][];

  constructor(private readonly problem: Problem) {
    this.profiles = problem.pools.map(({ pool }) => new StockProfile(pool.quantity));
    this.loans = problem.pools.map(() => []);
  }

  /** Takes what a placed phase holds; stays out while the releasing phase has no place. */
  lend(node: Node, from: Slot, finish: Slot, outcomes: readonly (Outcome | undefined)[]): Loan[] {
    return this.lendUntil(node, from, finish, (releaser) =>
      releaser === node ? finish : (placedFinish(outcomes[releaser.index]) ?? Infinity),
    );
  }

  /** Takes what a phase with a promised start will hold, as far as promises tell; nothing when it cannot be had. */
  promise(node: Node, from: Slot, finish: Slot): Loan[] {
    if (this.shortFor(node, from, finish)) return [];
    return this.lendUntil(node, from, finish, (releaser) => releaser.phase.commitment?.finish ?? finish);
  }

  private lendUntil(node: Node, from: Slot, least: Slot, backAt: (releaser: Node) => number): Loan[] {
    return node.holds.map(({ hold: { quantity }, pool, releaser }) => {
      const to = Math.max(from, least, backAt(releaser));
      const loan = { node, pool, quantity, releaser, from, least, to };
      this.profiles[pool.index]!.add(from, to, quantity);
      this.loans[pool.index]!.push(loan);
      return loan;
    });
  }

  /** Undoes `lend`. */
  takeBack(loan: Loan): void {
    this.profiles[loan.pool.index]!.add(loan.from, loan.to, -loan.quantity);
    const loans = this.loans[loan.pool.index]!;
    loans.splice(loans.lastIndexOf(loan), 1);
  }

  /** Undoes `takeBack`. */
  lendAgain(loan: Loan): void {
    this.profiles[loan.pool.index]!.add(loan.from, loan.to, loan.quantity);
    this.loans[loan.pool.index]!.push(loan);
  }

  /** Sets when a loan ends. */
  endLoan(loan: Loan, to: number): void {
    const profile = this.profiles[loan.pool.index]!;
    const end = Math.max(to, loan.from, loan.least);
    if (end < loan.to) profile.add(end, loan.to, -loan.quantity);
    else profile.add(loan.to, end, loan.quantity);
    loan.to = end;
  }

  /**
   * The first shortage that would meet a phase from its start to its own finish. What a hold needs beyond that is tried once the
   * releasing phase has its place.
   */
  shortFor(node: Node, from: Slot, to: Slot): (Shortage & { pool: CompiledPool }) | undefined {
    if (node.needs.length === 0 || to <= from) return undefined;
    let first: (Shortage & { pool: CompiledPool }) | undefined;
    for (const { pool, quantity } of node.needs) {
      const short = this.profiles[pool.index]!.firstShort(from, to, quantity);
      if (short && (!first || short.from < first.from)) first = { ...short, pool };
    }
    return first;
  }

  /** The first shortage that a loan meets, up to when the others leave enough for it. */
  shortDuring({ pool, quantity, from, to }: Loan): Shortage | undefined {
    const profile = this.profiles[pool.index]!;
    profile.add(from, to, -quantity);
    const short = profile.firstShort(from, to, quantity);
    profile.add(from, to, quantity);
    return short;
  }

  /** Every stretch in which more is out of a pool than it has. */
  overdrawn({ index }: CompiledPool): Shortage[] {
    const found: Shortage[] = [];
    let from: number = LONG_AGO;
    for (;;) {
      const short = this.profiles[index]!.firstShort(from as Slot, Infinity, 0);
      if (!short) return found;
      found.push(short);
      if (short.to === Infinity) return found;
      from = short.to;
    }
  }

  /** Who has the equipment that comes back at the end of a shortage. */
  blame(pool: CompiledPool, short: Shortage, self: Node): Extract<Reason, { kind: 'equipment' }> {
    const loan = this.blamed(pool, short, self);
    return {
      kind: 'equipment',
      poolId: pool.pool.id,
      phaseId: loan?.node.id ?? self.id,
      releasedBy: loan && loan.releaser !== loan.node ? loan.releaser.id : null,
      until: short.to === Infinity ? null : slot(short.to),
      ahead: loan ? aheadOf(loan.node, self, this.problem.input) : 'id',
    };
  }

  private blamed(pool: CompiledPool, short: Shortage, self: Node): Loan | undefined {
    let best: Loan | undefined;
    for (const loan of this.loans[pool.index]!) {
      if (loan.node === self || loan.from >= short.to || loan.to <= short.from) continue;
      if (!best || isMoreToBlame(loan, best, short.to)) best = loan;
    }
    return best;
  }

  /** Loans of a pool that nobody has ended. */
  openLoans(pool: CompiledPool): Loan[] {
    return this.loans[pool.index]!.filter((loan) => loan.to === Infinity);
  }

  /** Every loan of a pool. */
  loansOf(pool: CompiledPool): readonly Loan[] {
    return this.loans[pool.index]!;
  }
}

/** What comes back just then, before what does not; of several the first by id. */
function isMoreToBlame(loan: Loan, than: Loan, at: number): boolean {
  const [back, other] = [loan.to === at, than.to === at];
  return back === other ? loan.node.index < than.node.index : back;
}

function placedFinish(outcome: Outcome | undefined): Slot | null {
  return outcome?.placed ? outcome.finish : null;
}
