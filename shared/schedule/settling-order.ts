import type { Node } from './problem.js';

/**
 * The order in which phases were given their places: first what facts settle, then block by block. A block is what is settled in one go: a
 * phase by itself, or one with the way to what it must not be placed without.
 */
export class SettlingOrder {
  /** All phases, the first to be settled first. */
  readonly nodes: Node[] = [];
  /** The phase for which each block was settled. */
  readonly heads: Node[] = [];
  /** Where each block begins among the phases: the first is where the facts end. */
  readonly starts: number[] = [];

  /** Number of blocks. */
  get blocks(): number {
    return this.heads.length;
  }

  /** Where the facts end. */
  get factsEnd(): number {
    return this.starts[0] ?? this.nodes.length;
  }

  /** What facts settle. */
  get facts(): readonly Node[] {
    return this.nodes.slice(0, this.factsEnd);
  }

  /** Notes that what is settled from here on is a block. */
  begin(head: Node): void {
    this.heads.push(head);
    this.starts.push(this.nodes.length);
  }

  /** Where a block begins. */
  startOf(block: number): number {
    return this.starts[block]!;
  }

  /** Where a block ends. */
  endOf(block: number): number {
    return this.starts[block + 1] ?? this.nodes.length;
  }
}
