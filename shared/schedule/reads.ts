import type { Node } from './problem.js';

/** Beyond any horizon. */
export const FOREVER = 2 ** 30;

/**
 * How much of the time of its crews and pools each search has looked at: a phase can only come to sit elsewhere when something in there
 * has changed, or one of its own conditions.
 */
export class Reads {
  private readonly from: Int32Array;
  private readonly to: Int32Array;
  private readonly poolTo: Int32Array;
  private readonly turns: Int32Array;
  private turn = 0;

  constructor(count: number) {
    this.from = new Int32Array(count);
    this.to = new Int32Array(count);
    this.poolTo = new Int32Array(count);
    this.turns = new Int32Array(count).fill(-1);
  }

  /** What is read from here on replaces what was read before for the phases it concerns. */
  begin(): void {
    this.turn++;
  }

  /** Adds a stretch. */
  add({ index }: Node, from: number, to: number): void {
    if (this.turns[index] !== this.turn) this.open(index);
    if (from < this.from[index]!) this.from[index] = from;
    if (to > this.to[index]!) this.to[index] = to;
  }

  /** Adds a stretch in which only equipment was looked at. */
  addPools({ index }: Node, to: number): void {
    if (this.turns[index] !== this.turn) this.open(index);
    if (to > this.poolTo[index]!) this.poolTo[index] = Math.min(to, FOREVER);
  }

  /** Whether any of a stretch was read. */
  touch({ index }: Node, from: number, to: number): boolean {
    return this.from[index]! < to && from < this.to[index]!;
  }

  /** Whether any of a stretch was read for equipment. */
  touchPools({ index }: Node, from: number, to: number): boolean {
    return this.from[index]! < to && from < Math.max(this.to[index]!, this.poolTo[index]!);
  }

  private open(index: number): void {
    this.turns[index] = this.turn;
    this.from[index] = FOREVER;
    this.to[index] = -FOREVER;
    this.poolTo[index] = -FOREVER;
  }
}
