import type { Phase, PlanInput } from '../../../shared/schedule/model.js';

/** Equipment out with a phase; `to` is Infinity while nobody knows when `releasedBy` finishes. */
interface Loan {
  readonly phase: Phase;
  readonly poolId: string;
  readonly quantity: number;
  readonly releasedBy: string;
  readonly from: number;
  /** Finish of the phase itself: it comes back no sooner. */
  readonly least: number;
  to: number;
}

/** A stretch in which a pool has not enough; `to` is Infinity where it never has again. */
export interface Lack {
  readonly poolId: string;
  readonly from: number;
  readonly to: number;
}

/** What is out of every pool, slot by slot; the entry after the last slot stands for ever after. */
export class Store {
  private readonly out = new Map<string, Int32Array>();
  private readonly quantity = new Map<string, number>();
  private readonly loans: Loan[] = [];

  constructor(input: PlanInput) {
    for (const { id, quantity } of input.pools) {
      this.out.set(id, new Int32Array(input.horizon + 1));
      this.quantity.set(id, quantity);
    }
  }

  /** Whether a phase asks for more than there is at all. */
  asksTooMuch(phase: Phase): boolean {
    return (phase.holds ?? []).some(({ poolId }) => asked(phase, poolId) > this.quantity.get(poolId)!);
  }

  /** Takes what a phase holds. `finishOf` tells the finish of a phase that has a place. */
  take(phase: Phase, from: number, finish: number, finishOf: (id: string) => number | undefined): void {
    for (const { poolId, quantity, untilPhaseId: releasedBy = phase.id } of phase.holds ?? []) {
      const back = releasedBy === phase.id ? finish : (finishOf(releasedBy) ?? Infinity);
      const loan: Loan = { phase, poolId, quantity, releasedBy, from, least: finish, to: 0 };
      loan.to = Math.max(from, finish, back);
      this.write(loan, quantity);
      this.loans.push(loan);
    }
  }

  /** Undoes `take`. */
  takeBack(phase: Phase): void {
    for (let i = this.loans.length - 1; i >= 0; i--) {
      const loan = this.loans[i]!;
      if (loan.phase !== phase) continue;
      this.write(loan, -loan.quantity);
      this.loans.splice(i, 1);
    }
  }

  /** Tells when what waits for a phase comes back; undefined: nobody knows any more. */
  release(releasedBy: string, finish: number | undefined): void {
    for (const loan of this.loans) {
      if (loan.releasedBy !== releasedBy || loan.phase.id === releasedBy) continue;
      this.write(loan, -loan.quantity);
      loan.to = finish === undefined ? Infinity : Math.max(finish, loan.from, loan.least);
      this.write(loan, loan.quantity);
    }
  }

  /** The first lack that would meet a phase between two instants. */
  lackFor(phase: Phase, from: number, to: number): Lack | undefined {
    let first: Lack | undefined;
    if (to <= from) return undefined;
    for (const { poolId } of phase.holds ?? []) {
      const lack = this.firstLack(poolId, from, to, asked(phase, poolId));
      if (lack && (!first || lack.from < first.from)) first = lack;
    }
    return first;
  }

  /** The first lack in what a phase has taken, up to when the others leave enough. */
  lackOf(phase: Phase): Lack | undefined {
    for (const { poolId } of phase.holds ?? []) {
      for (const loan of this.loans) {
        if (loan.phase !== phase || loan.poolId !== poolId) continue;
        this.write(loan, -loan.quantity);
        const lack = this.firstLack(poolId, loan.from, loan.to, loan.quantity);
        this.write(loan, loan.quantity);
        if (lack) return lack;
      }
    }
    return undefined;
  }

  /** The phase whose finish ends a lack, or that has the equipment. */
  whoHas({ poolId, from, to }: Lack, self: Phase): string {
    const out = this.loans.filter(
      (loan) => loan.poolId === poolId && loan.phase !== self && loan.from < to && loan.to > from,
    );
    const back = out.filter((loan) => loan.to === to);
    const [first] = (back.length > 0 ? back : out).sort((a, b) => (a.phase.id < b.phase.id ? -1 : 1));
    return first?.releasedBy ?? self.id;
  }

  /** Loans of a pool that nobody knows the end of. */
  openLoans(poolId: string): { readonly phase: Phase; readonly releasedBy: string }[] {
    return this.loans.filter((loan) => loan.poolId === poolId && loan.to === Infinity);
  }

  private write({ poolId, from, to }: Loan, quantity: number): void {
    const out = this.out.get(poolId)!;
    const end = to === Infinity ? out.length : to;
    for (let t = from; t < end; t++) out[t]! += quantity;
  }

  private firstLack(poolId: string, from: number, to: number, more: number): Lack | undefined {
    const out = this.out.get(poolId)!;
    const most = this.quantity.get(poolId)! - more;
    for (let t = from; t < to && t < out.length; t++) {
      if (out[t]! <= most) continue;
      let end = t;
      while (end < out.length && out[end]! > most) end++;
      return { poolId, from: t, to: end === out.length ? Infinity : end };
    }
    return undefined;
  }
}

/** What a phase takes from a pool in all. */
function asked(phase: Phase, poolId: string): number {
  return (phase.holds ?? []).reduce((sum, hold) => sum + (hold.poolId === poolId ? hold.quantity : 0), 0);
}
