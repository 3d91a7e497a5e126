import type { Node, Problem } from './problem.js';
import type { Ranking } from './rank.js';
import { RankQueue } from './rank-queue.js';
import { SettlingOrder } from './settling-order.js';

/**
 * The order of settling as ranks and links alone give it: the first rank among phases whose prerequisites are settled; before a phase that
 * holds equipment what gives it back, where that does not wait for the phase; after it the way to what does.
 */
export abstract class Walk {
  protected readonly queue = new RankQueue();
  /** 1 for phases that are being placed. */
  protected readonly busy: Uint8Array;

  constructor(
    protected readonly problem: Problem,
    protected readonly ranking: Ranking,
  ) {
    this.busy = new Uint8Array(problem.nodes.length);
  }

  abstract isSettled(node: Node): boolean;
  /** Whether everything a phase waits for is settled and it is not. */
  abstract isReady(node: Node): boolean;
  /** Settles one phase whose prerequisites are settled, with the ways that belong to it. */
  protected abstract settle(node: Node): void;

  /** To be called for each phase as its last prerequisite is settled. */
  protected readonly enqueue = (node: Node): void => {
    this.queue.push(this.ranking.rank[node.index]!);
  };

  /** Settles everything that is not settled. */
  protected drain(order: SettlingOrder): void {
    const { byRank } = this.ranking;
    for (let next = this.queue.pop(); next !== undefined; next = this.queue.pop()) {
      const head = byRank[next]!;
      if (!this.isReady(head)) continue;
      order.begin(head);
      this.settle(head);
    }
  }

  /** Releases that do not wait for this phase are placed before it, so that it knows when they come. */
  protected settleFreeReleases(node: Node): void {
    this.busy[node.index] = 1;
    for (const { releaser } of node.holds) {
      if (releaser !== node && !this.wayTo(releaser).has(node)) this.settleUpTo(releaser);
    }
    this.busy[node.index] = 0;
  }

  /** Settles a phase and everything it waits for, best rank first. */
  protected settleUpTo(goal: Node): void {
    if (this.isSettled(goal)) return;
    const { rank } = this.ranking;
    const list = [...this.wayTo(goal)].sort((a, b) => rank[a.index]! - rank[b.index]!);
    const ready = (one: Node): boolean => this.isReady(one) && this.busy[one.index] === 0;
    for (let next = list.find(ready); next; next = list.find(ready)) this.settle(next);
  }

  /** A phase and everything it waits for, as far as it is not settled. */
  private wayTo(goal: Node): Set<Node> {
    const wanted = new Set<Node>();
    const path = [goal];
    for (let node = path.pop(); node; node = path.pop()) {
      if (wanted.has(node) || this.isSettled(node)) continue;
      wanted.add(node);
      path.push(...node.prerequisites);
    }
    return wanted;
  }
}

/** The walk without placing anything: in which order a pass over the same facts will settle phases after their ranks have changed. */
export class BareWalk extends Walk {
  private readonly order = new SettlingOrder();
  private readonly done: Uint8Array;
  private readonly waiting: Int32Array;

  private constructor(problem: Problem, ranking: Ranking) {
    super(problem, ranking);
    this.done = new Uint8Array(problem.nodes.length);
    this.waiting = Int32Array.from(problem.nodes, ({ prerequisites }) => prerequisites.length);
  }

  /**
   * @param facts what is settled to begin with
   */
  static of(problem: Problem, ranking: Ranking, facts: readonly Node[]): SettlingOrder {
    const walk = new BareWalk(problem, ranking);
    for (const node of facts) walk.take(node);
    for (const node of problem.nodes) if (walk.isReady(node)) walk.enqueue(node);
    walk.drain(walk.order);
    return walk.order;
  }

  isSettled({ index }: Node): boolean {
    return this.done[index] === 1;
  }

  isReady({ index }: Node): boolean {
    return this.done[index] === 0 && this.waiting[index] === 0;
  }

  protected settle(node: Node): void {
    this.settleFreeReleases(node);
    this.take(node);
    for (const { releaser } of node.holds) if (releaser !== node) this.settleUpTo(releaser);
  }

  private take(node: Node): void {
    this.done[node.index] = 1;
    this.order.nodes.push(node);
    for (const after of node.dependents) if (--this.waiting[after.index]! === 0) this.enqueue(after);
  }
}
