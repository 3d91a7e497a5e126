import type { Outcome } from './outcome.js';
import type { Node, Problem } from './problem.js';
import { FOREVER, type Reads } from './reads.js';
import type { Reservation } from './state.js';

/** Phases that the pass before settled in one go: one by itself, or one with the way to what it must not be placed without. */
export interface Block {
  /** The phase it was settled for. */
  readonly head: Node;
  readonly members: readonly Node[];
}

/**
 * What is known of the pass before while a new one runs over changed input: which of its places still hold. A phase keeps its place when
 * neither it nor anything it waits for has changed, and nothing that has changed lies in the time its search looked at. Whatever the order
 * of settling does not bear out is given up: `outOfStep` then asks for a whole pass.
 */
export class Replay {
  /** The order came out otherwise than the rules of keeping places allow for: nothing of this pass is to be used. */
  outOfStep = false;
  /** Phases that have been placed anew and sit elsewhere, or for another reason. */
  readonly renewed = new Set<Node>();
  private readonly stale: Uint8Array;
  private readonly crewFrom: Int32Array;
  private readonly crewTo: Int32Array;
  private readonly poolFrom: Int32Array;
  private readonly poolTo: Int32Array;
  /** From the first to the last time of any crew that is not as it was. */
  private from = FOREVER;
  private to = -FOREVER;
  private next = 0;
  private inBlock = 0;

  /**
   * @param old outcomes of the pass before
   * @param blocks what it settled from where the new one begins, in order
   * @param moved phases that have changed their rank
   * @param changed phases that have changed in themselves
   */
  constructor(
    problem: Problem,
    private readonly old: readonly (Outcome | undefined)[],
    private readonly blocks: readonly Block[],
    private readonly moved: ReadonlySet<Node>,
    private readonly changed: ReadonlySet<Node>,
    private readonly reads: Reads,
  ) {
    this.stale = new Uint8Array(problem.nodes.length);
    this.crewFrom = new Int32Array(problem.crews.length).fill(FOREVER);
    this.crewTo = new Int32Array(problem.crews.length).fill(-FOREVER);
    this.poolFrom = new Int32Array(problem.pools.length).fill(FOREVER);
    this.poolTo = new Int32Array(problem.pools.length).fill(-FOREVER);
    for (const node of changed) this.mark(node, old[node.index]);
    for (const node of moved) this.mark(node, old[node.index]);
    this.skipMoved();
  }

  /** Notes that a phase is to be placed anew, and that what it took is no longer as it was. */
  private mark(node: Node, was: Outcome | undefined): void {
    this.stale[node.index] = 1;
    this.disturb(node, was);
  }

  /** Notes that a reservation has come or gone. */
  disturbReservation(node: Node, kept: Reservation | undefined): void {
    if (!kept) return;
    if (kept.crew >= 0) this.disturbCrew(kept.crew, kept.from, kept.to);
    this.disturbPools(node, kept.from, FOREVER);
  }

  /** The block that holds as it stands and comes next when `head` is due; undefined when it has to be placed anew. */
  kept(head: Node): Block | undefined {
    const block = this.inBlock === 0 ? this.blocks[this.next] : undefined;
    if (!block || block.head !== head) return undefined;
    for (const node of block.members) if (this.isTouched(node)) return undefined;
    this.next++;
    this.skipMoved();
    return block;
  }

  /** Where the pass before had a phase. */
  outcomeOf({ index }: Node): Outcome {
    return this.old[index]!;
  }

  /** Compares what has been placed anew with the pass before. */
  placed(nodes: readonly Node[], outcomes: readonly (Outcome | undefined)[]): void {
    for (const node of nodes) {
      const [was, is] = [this.old[node.index], outcomes[node.index]];
      if (!was?.placed || !is?.placed) {
        this.outOfStep = true;
        return;
      }
      if (!this.moved.has(node)) this.follow(node);
      this.renewed.add(node);
      const same = was.start === is.start && was.finish === is.finish && was.crewIndex === is.crewIndex;
      if (same && !this.changed.has(node)) continue;
      this.disturb(node, was);
      this.disturb(node, is);
      for (const { index } of node.dependents) this.stale[index] = 1;
      // What it gives back is held for as long as it says.
      for (const { holder } of node.releases) this.stale[holder.index] = 1;
    }
  }

  /** Phases that have not changed their rank must come in the same order as before. */
  private follow(node: Node): void {
    const block = this.blocks[this.next];
    if (block?.members[this.inBlock] !== node) {
      this.outOfStep = true;
      return;
    }
    this.inBlock++;
    this.skipMoved();
  }

  private skipMoved(): void {
    for (let block = this.blocks[this.next]; block; block = this.blocks[this.next]) {
      while (this.inBlock < block.members.length && this.moved.has(block.members[this.inBlock]!))
        this.inBlock++;
      if (this.inBlock < block.members.length) return;
      this.next++;
      this.inBlock = 0;
    }
  }

  private isTouched(node: Node): boolean {
    if (this.stale[node.index] === 1) return true;
    const { crewFrom, crewTo, poolFrom, poolTo, reads } = this;
    const { choices, needs } = node;
    if (reads.touch(node, this.from, this.to)) {
      for (let i = 0; i < choices.length; i++) {
        const crew = choices[i]!.crewIndex;
        if (crew >= 0 && reads.touch(node, crewFrom[crew]!, crewTo[crew]!)) return true;
      }
    }
    for (let i = 0; i < needs.length; i++) {
      const { index } = needs[i]!.pool;
      if (reads.touchPools(node, poolFrom[index]!, poolTo[index]!)) return true;
    }
    return false;
  }

  /** What a phase takes, or took, is not as it was. */
  private disturb(node: Node, outcome: Outcome | undefined): void {
    if (!outcome?.placed) return;
    const { crewIndex, start, finish } = outcome;
    if (crewIndex >= 0) this.disturbCrew(crewIndex, start, finish);
    this.disturbPools(node, start, finish);
    for (const { pool } of node.releases) this.disturbPool(pool.index, finish, finish);
  }

  private disturbCrew(crew: number, from: number, to: number): void {
    if (from < this.crewFrom[crew]!) this.crewFrom[crew] = from;
    if (to > this.crewTo[crew]!) this.crewTo[crew] = to;
    if (from < this.from) this.from = from;
    if (to > this.to) this.to = to;
  }

  private disturbPools(node: Node, from: number, to: number): void {
    for (const { pool } of node.holds) this.disturbPool(pool.index, from, to);
  }

  private disturbPool(pool: number, from: number, to: number): void {
    if (from < this.poolFrom[pool]!) this.poolFrom[pool] = from;
    if (to > this.poolTo[pool]!) this.poolTo[pool] = to;
  }
}
