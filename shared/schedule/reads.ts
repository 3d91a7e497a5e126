import type { Node } from './problem.js';
import { FOREVER } from './view.js';

/**
 * How much of the time of its crews and pools each search has looked at: a phase can only come to sit elsewhere when something in there
 * has changed, or one of its own conditions.
 */
export class Reads {
  private readonly starts: Int32Array;
  private readonly ends: Int32Array;
  private readonly poolEnds: Int32Array;
  private readonly turns: Int32Array;
  private turn = 0;

  constructor(count: number) {
    this.starts = new Int32Array(count);
    this.ends = new Int32Array(count);
    this.poolEnds = new Int32Array(count);
    this.turns = new Int32Array(count).fill(-1);
  }

  /** What is read from here on replaces what was read before for the phases it concerns. */
  begin(): void {
    this.turn++;
  }

  /** Adds a stretch. */
  add({ index }: Node, from: number, to: number): void {
    if (this.turns[index] !== this.turn) this.open(index);
    if (from < this.starts[index]!) this.starts[index] = from;
    if (to > this.ends[index]!) this.ends[index] = to;
  }

  /** Adds a stretch in which only equipment was looked at. */
  addPools({ index }: Node, to: number): void {
    if (this.turns[index] !== this.turn) this.open(index);
    if (to > this.poolEnds[index]!) this.poolEnds[index] = Math.min(to, FOREVER);
  }

  /** The first instant that was looked at for a phase. */
  from({ index }: Node): number {
    return this.starts[index]!;
  }

  /** The last at which its crews were. */
  to({ index }: Node): number {
    return this.ends[index]!;
  }

  /** The last at which its equipment was. */
  poolsTo({ index }: Node): number {
    return Math.max(this.ends[index]!, this.poolEnds[index]!);
  }

  private open(index: number): void {
    this.turns[index] = this.turn;
    this.starts[index] = FOREVER;
    this.ends[index] = -FOREVER;
    this.poolEnds[index] = -FOREVER;
  }
}
