import { LONG_AGO } from './link-lag.js';
import type { EquipmentHold, Phase, Pool, Reason } from './model.js';
import type { Outcome } from './outcome.js';
import type { Node, Problem } from './problem.js';
import { aheadOf } from './rank.js';
import { slot, type Slot } from './slot.js';
import { StockProfile, type Shortage } from './stock-profile.js';

/** Equipment out with a phase. */
export interface Loan {
  readonly node: Node;
  readonly hold: EquipmentHold;
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
  private readonly pools = new Map<string, { profile: StockProfile; loans: Loan[] }>();

  constructor(private readonly problem: Problem) {
    for (const pool of problem.input.pools) {
      this.pools.set(pool.id, { profile: new StockProfile(pool.quantity), loans: [] });
    }
  }

  /** The first hold whose quantity is more than the whole pool. */
  tooSmall(phase: Phase): { hold: EquipmentHold; pool: Pool } | undefined {
    for (const hold of phase.holds ?? []) {
      const pool = this.problem.input.pools.find(({ id }) => id === hold.poolId)!;
      if (holdsOf(phase, pool.id) > pool.quantity) return { hold, pool };
    }
    return undefined;
  }

  /** Takes what a placed phase holds; stays out while the releasing phase has no place. */
  lend(node: Node, from: Slot, finish: Slot, outcomes: readonly (Outcome | undefined)[]): Loan[] {
    return this.lendUntil(node, from, finish, (releaser) =>
      releaser === node ? finish : (placedFinish(outcomes[releaser.index]) ?? Infinity),
    );
  }

  /** Takes what a phase with a promised start will hold, as far as promises tell; nothing when it cannot be had. */
  promise(node: Node, from: Slot, finish: Slot): Loan[] {
    if (this.shortFor(node.phase, from, finish)) return [];
    return this.lendUntil(node, from, finish, (releaser) => releaser.phase.commitment?.finish ?? finish);
  }

  private lendUntil(node: Node, from: Slot, least: Slot, backAt: (releaser: Node) => number): Loan[] {
    return (node.phase.holds ?? []).map((hold) => {
      const releaser = hold.untilPhaseId === undefined ? node : this.problem.node(hold.untilPhaseId);
      const to = Math.max(from, least, backAt(releaser));
      const loan = { node, hold, releaser, from, least, to };
      const { profile, loans } = this.pools.get(hold.poolId)!;
      profile.add(from, to, hold.quantity);
      loans.push(loan);
      return loan;
    });
  }

  /** Undoes `lend`. */
  takeBack(loan: Loan): void {
    const { profile, loans } = this.pools.get(loan.hold.poolId)!;
    profile.add(loan.from, loan.to, -loan.hold.quantity);
    loans.splice(loans.indexOf(loan), 1);
  }

  /** Sets when a loan ends. */
  endLoan(loan: Loan, to: number): void {
    const { profile } = this.pools.get(loan.hold.poolId)!;
    profile.add(loan.from, loan.to, -loan.hold.quantity);
    loan.to = Math.max(to, loan.from, loan.least);
    profile.add(loan.from, loan.to, loan.hold.quantity);
  }

  /**
   * The first shortage that would meet a phase from its start to its own finish. What a hold needs beyond that is tried once the
   * releasing phase has its place.
   */
  shortFor(phase: Phase, from: Slot, to: Slot): (Shortage & { poolId: string }) | undefined {
    if (to <= from) return undefined;
    let first: (Shortage & { poolId: string }) | undefined;
    for (const { poolId } of phase.holds ?? []) {
      const { profile } = this.pools.get(poolId)!;
      const short = profile.firstShort(from, to, holdsOf(phase, poolId));
      if (short && (!first || short.from < first.from)) first = { ...short, poolId };
    }
    return first;
  }

  /** The first shortage that a loan meets, up to when the others leave enough for it. */
  shortDuring({ hold, from, to }: Loan): Shortage | undefined {
    const { profile } = this.pools.get(hold.poolId)!;
    profile.add(from, to, -hold.quantity);
    const short = profile.firstShort(from, to, hold.quantity);
    profile.add(from, to, hold.quantity);
    return short;
  }

  /** Every stretch in which more is out of a pool than it has. */
  overdrawn(poolId: string): Shortage[] {
    const found: Shortage[] = [];
    const { profile } = this.pools.get(poolId)!;
    let from: number = LONG_AGO;
    for (;;) {
      const short = profile.firstShort(from as Slot, Infinity, 0);
      if (!short) return found;
      found.push(short);
      if (short.to === Infinity) return found;
      from = short.to;
    }
  }

  /** Who has the equipment that comes back at the end of a shortage. */
  blame(poolId: string, short: Shortage, self: Node): Extract<Reason, { kind: 'equipment' }> {
    const { loans } = this.pools.get(poolId)!;
    const out = loans.filter((l) => l.node !== self && l.from < short.to && l.to > short.from);
    const back = out.filter((l) => l.to === short.to);
    const loan = (back.length > 0 ? back : out).reduce<Loan | undefined>(
      (best, l) => (!best || l.node.index < best.node.index ? l : best),
      undefined,
    );
    return {
      kind: 'equipment',
      poolId,
      phaseId: loan?.node.id ?? self.id,
      releasedBy: loan && loan.releaser !== loan.node ? loan.releaser.id : null,
      until: short.to === Infinity ? null : slot(short.to),
      ahead: loan ? aheadOf(loan.node, self, this.problem.input) : 'id',
    };
  }

  /** Loans of a pool that nobody has ended. */
  openLoans(poolId: string): Loan[] {
    return this.pools.get(poolId)!.loans.filter((loan) => loan.to === Infinity);
  }

  /** Every loan, by pool. */
  loansOf(poolId: string): readonly Loan[] {
    return this.pools.get(poolId)!.loans;
  }
}

function holdsOf(phase: Phase, poolId: string): number {
  let sum = 0;
  for (const hold of phase.holds ?? []) if (hold.poolId === poolId) sum += hold.quantity;
  return sum;
}

function placedFinish(outcome: Outcome | undefined): Slot | null {
  return outcome?.placed ? outcome.finish : null;
}
