import type { CompiledPool, Node, Problem } from './problem.js';
import type { SettlingOrder } from './settling-order.js';
import type { Loan, Stock } from './stock.js';

/** What a phase has of the pools. */
export interface Taken {
  /** What it holds once it is placed. */
  loans(index: number): readonly Loan[];
  /** What was set aside for it before. */
  promised(index: number): readonly Loan[];
}

/** Pools by turns: each can be brought to where it stood when any place in the order of settling came up. */
export class PoolTurns {
  /** Place of each phase in the order. */
  private readonly places: Int32Array;
  /** By pool, the phases that hold some of it, in that order; and how many of them have it. */
  private readonly holders: Node[][];
  private readonly lent: Int32Array;

  constructor(
    private readonly problem: Problem,
    private readonly stock: Stock,
    private readonly taken: Taken,
  ) {
    this.places = new Int32Array(problem.nodes.length);
    this.holders = problem.pools.map(() => []);
    this.lent = new Int32Array(problem.pools.length);
  }

  /** Starts with everything that is placed in an order holding what it holds. */
  start({ nodes }: SettlingOrder): void {
    for (const holders of this.holders) holders.length = 0;
    for (let i = 0; i < nodes.length; i++) {
      const node = nodes[i]!;
      this.places[node.index] = i;
      for (const { pool } of node.needs) this.holders[pool.index]!.push(node);
    }
    for (let pool = 0; pool < this.holders.length; pool++) this.lent[pool] = this.holders[pool]!.length;
  }

  /** Place of a phase in the order. */
  placeOf({ index }: Node): number {
    return this.places[index]!;
  }

  /** Brings the pools that a block needs to where they stand when it comes up. */
  open({ nodes }: SettlingOrder, from: number, to: number): void {
    for (let i = from; i < to; i++) {
      const { needs } = nodes[i]!;
      for (let k = 0; k < needs.length; k++) this.turnTo(from, needs[k]!.pool);
    }
  }

  /** Notes that the block has been settled again, with what it holds. */
  close({ nodes }: SettlingOrder, from: number, to: number): void {
    for (let i = from; i < to; i++) for (const { pool } of nodes[i]!.needs) this.lent[pool.index]!++;
  }

  /** All pools as everything that is placed leaves them. */
  finish(): void {
    for (const pool of this.problem.pools) this.turnTo(Infinity, pool);
  }

  private turnTo(place: number, pool: CompiledPool): void {
    const { places } = this;
    const holders = this.holders[pool.index]!;
    let lent = this.lent[pool.index]!;
    for (; lent > 0 && places[holders[lent - 1]!.index]! >= place; lent--) {
      const { index } = holders[lent - 1]!;
      this.swap(pool, this.taken.loans(index), this.taken.promised(index));
    }
    for (; lent < holders.length && places[holders[lent]!.index]! < place; lent++) {
      const { index } = holders[lent]!;
      this.swap(pool, this.taken.promised(index), this.taken.loans(index));
    }
    this.lent[pool.index] = lent;
  }

  private swap(pool: CompiledPool, back: readonly Loan[], out: readonly Loan[]): void {
    for (const loan of back) if (loan.pool === pool) this.stock.takeBack(loan);
    for (const loan of out) if (loan.pool === pool) this.stock.lendAgain(loan);
  }
}
