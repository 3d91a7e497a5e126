import { Disturbed } from './disturbed.js';
import type { Generator } from './generate.js';
import type { Outcome, Placement } from './outcome.js';
import type { Node, Problem } from './problem.js';
import { samePlace, samePlacement } from './same-placement.js';
import type { SettlingOrder } from './settling-order.js';
import type { Reservation } from './state.js';

/** What has changed since the pass that is gone over. */
export interface Touched {
  /** Phases that have changed in themselves. */
  readonly changed: ReadonlySet<Node>;
  /** Phases that have changed their place among the others. */
  readonly moved: ReadonlySet<Node>;
  /** Phases that a person has fixed, or had. */
  readonly pins: readonly Node[];
}

/**
 * Goes over a pass again after a change. Everything stays where it is; block by block in the order of settling, what the change reaches is
 * taken out and placed anew, seeing only what comes before it. A phase is reached when it has changed, when something it waits for has come
 * to sit elsewhere, or when something in the time of crews and pools that its search had read is not as it was.
 */
export class Replay {
  private readonly renewed = new Set<Node>();
  /** Where pins were. */
  private readonly loosened = new Map<Node, Outcome>();
  private readonly stale: Uint8Array;
  private readonly crews: Disturbed;
  private readonly pools: Disturbed;

  constructor(
    problem: Problem,
    private readonly generator: Generator,
    private readonly touched: Touched,
  ) {
    this.stale = new Uint8Array(problem.nodes.length);
    this.crews = new Disturbed(problem.crews.length, problem.end);
    this.pools = new Disturbed(problem.pools.length, problem.end);
  }

  /**
   * @param old the order of the pass that is gone over; the generator has the one to follow
   * @returns phases placed anew; undefined when the rules of keeping places do not bear the change out: then nothing of it is to be used
   */
  run(old: SettlingOrder): ReadonlySet<Node> | undefined {
    const { order, state } = this.generator;
    const { changed, moved, pins } = this.touched;
    state.goOver(order);
    for (const { index } of changed) this.stale[index] = 1;
    for (const node of moved) {
      this.stale[node.index] = 1;
      this.disturbAll(node);
    }
    this.setPins(pins);
    if (order !== old) this.compareBlocks(old);
    for (let i = 0; i < order.factsEnd; i++) if (this.isReached(order.nodes[i]!)) return undefined;
    for (let block = 0; block < order.blocks; block++) {
      if (this.isBlockReached(block) && !this.placeAnew(block)) return undefined;
    }
    state.seeAll();
    return this.renewed;
  }

  /** Takes out what was set aside for pins, and sets aside what they ask for now, as it is done before anything but facts is settled. */
  private setPins(pins: readonly Node[]): void {
    const { state, order } = this.generator;
    state.seeUntil(order.factsEnd);
    for (const node of pins) {
      this.loosened.set(node, state.outcomes[node.index]!);
      this.disturbAll(node);
      this.disturbReservation(state.loosen(node));
    }
    for (const node of pins) if (node.pinned) this.disturbReservation(this.generator.reserve(node));
    this.markOusted();
  }

  private markOusted(): void {
    for (const index of this.generator.state.takeOusted()) this.stale[index] = 1;
  }

  /**
   * A block of other phases than before, or whose turn among the others is another, is placed anew; all that its phases have is seen by others
   * than before. Blocks that keep their order among themselves stay; a phase may come to another turn without a change of its own, on the way
   * to one that asks for it or behind one that it waits for.
   */
  private compareBlocks(old: SettlingOrder): void {
    const { order } = this.generator;
    const blockOf = new Map(old.heads.map((head, block) => [head, block]));
    let last = -1;
    order.heads.forEach((head, block) => {
      const was = blockOf.get(head);
      if (was !== undefined && was > last && this.isSameBlock(old, was, block)) {
        last = was;
        return;
      }
      this.stale[head.index] = 1;
      for (let i = order.startOf(block); i < order.endOf(block); i++) this.disturbAll(order.nodes[i]!);
    });
  }

  /** Whether a block is of the same phases as one before, none of which has changed its place among the others. */
  private isSameBlock(old: SettlingOrder, was: number, block: number): boolean {
    const { order } = this.generator;
    const [from, before] = [order.startOf(block), old.startOf(was)];
    const size = order.endOf(block) - from;
    if (old.endOf(was) - before !== size) return false;
    for (let i = 0; i < size; i++) {
      const node = order.nodes[from + i]!;
      if (node !== old.nodes[before + i] || this.touched.moved.has(node)) return false;
    }
    return true;
  }

  private isBlockReached(block: number): boolean {
    const { order } = this.generator;
    const end = order.endOf(block);
    for (let i = order.startOf(block); i < end; i++) if (this.isReached(order.nodes[i]!)) return true;
    return false;
  }

  /** Places a block anew and notes what is not as it was. */
  private placeAnew(block: number): boolean {
    const { generator, renewed } = this;
    const { order, state } = generator;
    const from = order.startOf(block);
    const nodes = order.nodes.slice(from, order.endOf(block));
    const old = nodes.map((node) => this.loosened.get(node) ?? state.outcomes[node.index]!);
    state.reopen(order, from, from + nodes.length);
    if (!generator.again(block)) return false;
    state.close(order, from, from + nodes.length);
    this.markOusted();
    for (let i = 0; i < nodes.length; i++) {
      const node = nodes[i]!;
      const [was, is] = [old[i]!, state.outcomes[node.index]!];
      if (!was.placed || !is.placed) return false;
      const changed = this.touched.changed.has(node);
      if (changed || !samePlacement(was, is)) renewed.add(node);
      if (!changed && samePlace(was, is)) continue;
      this.disturb(node, was, is);
      for (const { index } of node.dependents) this.stale[index] = 1;
      // What it gives back is held for as long as it says.
      for (const { holder } of node.releases) this.stale[holder.index] = 1;
    }
    return true;
  }

  private isReached(node: Node): boolean {
    if (this.stale[node.index] === 1) return true;
    const { crews, pools } = this;
    const { reads } = this.generator;
    const { choices, needs } = node;
    const from = reads.from(node);
    const to = reads.to(node);
    if (crews.touchesAny(from, to)) {
      for (let i = 0; i < choices.length; i++) {
        const { crewIndex } = choices[i]!;
        if (crewIndex >= 0 && crews.touches(crewIndex, from, to)) return true;
      }
    }
    for (let i = 0; i < needs.length; i++) {
      if (pools.touches(needs[i]!.pool.index, from, reads.poolsTo(node))) return true;
    }
    return false;
  }

  /** A phase has gone from one place to another. */
  private disturb(node: Node, was: Placement, is: Placement): void {
    if (was.crewIndex >= 0) this.crews.add(was.crewIndex, was.start, was.finish);
    if (is.crewIndex >= 0) this.crews.add(is.crewIndex, is.start, is.finish);
    const from = Math.min(was.start, is.start);
    const finish = Math.min(was.finish, is.finish);
    const to = Math.max(was.finish, is.finish);
    for (const { pool } of node.holds) this.pools.add(pool.index, from, to);
    for (const { pool } of node.releases) this.pools.add(pool.index, finish, to);
  }

  /** All that a phase has is seen by others than before. */
  private disturbAll(node: Node): void {
    const { outcomes } = this.generator.state;
    const was = outcomes[node.index];
    if (!was?.placed) return;
    this.disturb(node, was, was);
    for (const { pool, releaser } of node.holds) {
      const back = outcomes[releaser.index];
      if (back?.placed) this.pools.add(pool.index, was.start, back.finish);
    }
  }

  /** What was set aside for a phase that holds nothing is so no longer, or has come to be so. */
  private disturbReservation(kept: Reservation | undefined): void {
    if (kept && kept.crew >= 0) this.crews.add(kept.crew, kept.from, kept.to);
  }
}
