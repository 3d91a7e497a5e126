import { compareIds } from './by-id.js';
import type { Ahead, PlanInput } from './model.js';
import type { Node, Problem } from './problem.js';

/** How early a phase is dealt with: facts, then what is fixed, then the rest. */
type Class = 0 | 1 | 2;

interface Key {
  readonly group: Class;
  /** Place in the given order. */
  readonly listed: number;
  /** Where it stood before. */
  readonly order: number;
  readonly priority: number;
  readonly due: number;
  /** Longest way to the end, less than nothing: the longest comes first. */
  readonly tail: number;
}

/**
 * Gives every phase a rank, 0 first: started and finished, then frozen and pinned, then by where it stood before, job priority, due date,
 * longest tail, id. A phase is never ranked after one that waits for it: it takes over that one's urgency.
 */
export class Ranking {
  /** Rank of each phase. */
  readonly rank: Int32Array;
  /** Phases, first rank first. */
  byRank: readonly Node[];
  private readonly keys: Key[];
  private readonly tails: Float64Array;
  /** Indexes of phases, prerequisites first. */
  private readonly places: Int32Array;
  private readonly listed: ReadonlyMap<string, number>;

  /**
   * @param sequence phases with prerequisites first
   */
  constructor(
    private readonly problem: Problem,
    sequence: readonly Node[],
  ) {
    const { nodes } = problem;
    this.listed = placesOf(problem.input.order ?? []);
    this.places = Int32Array.from(sequence, ({ index }) => index);
    this.tails = new Float64Array(nodes.length);
    this.keys = new Array<Key>(nodes.length);
    this.rank = new Int32Array(nodes.length);
    for (let i = sequence.length - 1; i >= 0; i--) this.rate(sequence[i]!);
    this.byRank = [...nodes].sort((a, b) => this.compare(a, b));
    this.number();
  }

  /**
   * Ranks anew after some phases have changed.
   * @returns phases that have changed their place among the others
   */
  update(changed: ReadonlySet<Node>): Set<Node> {
    const { places, keys, tails } = this;
    const { nodes } = this.problem;
    const due = new Uint8Array(nodes.length);
    for (const { index } of changed) due[index] = 1;
    const rekeyed = new Set<Node>();
    for (let i = places.length - 1; i >= 0; i--) {
      if (due[places[i]!] === 0) continue;
      const node = nodes[places[i]!]!;
      const [key, tail] = [keys[node.index]!, tails[node.index]!];
      this.rate(node);
      const same = compareKeys(key, keys[node.index]!) === 0;
      if (!same) rekeyed.add(node);
      if (!same || tail !== tails[node.index]) for (const { index } of node.prerequisites) due[index] = 1;
    }
    if (rekeyed.size === 0) return rekeyed;
    const old = this.byRank;
    const byRank = old.filter((node) => !rekeyed.has(node));
    for (const node of rekeyed) byRank.splice(this.placeIn(byRank, node), 0, node);
    if (byRank.every((node, i) => node === old[i])) return new Set();
    this.byRank = byRank;
    this.number();
    return rekeyed;
  }

  private placeIn(list: readonly Node[], node: Node): number {
    let low = 0;
    let high = list.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (this.compare(list[middle]!, node) < 0) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  private number(): void {
    const { byRank, rank } = this;
    for (let i = 0; i < byRank.length; i++) rank[byRank[i]!.index] = i;
  }

  private compare(a: Node, b: Node): number {
    return compareKeys(this.keys[a.index]!, this.keys[b.index]!) || compareIds(a.id, b.id);
  }

  /** Tail and key of one phase whose dependents have theirs. */
  private rate(node: Node): void {
    const { keys, tails, problem } = this;
    const { index, dependents, phase, job } = node;
    let longest = 0;
    for (const { index: after } of dependents) if (tails[after]! > longest) longest = tails[after]!;
    const tail = longest + clockLength(problem, node);
    tails[index] = tail;
    const group = node.started || node.finished ? 0 : node.pinned || node.frozen ? 1 : 2;
    let key: Key = {
      group,
      listed: group === 2 && this.listed.size > 0 ? (this.listed.get(node.id) ?? Infinity) : 0,
      order: phase.commitment?.start ?? phase.previous?.start ?? Infinity,
      priority: job.priority,
      due: job.due ?? Infinity,
      tail: -tail,
    };
    for (const { index: after } of dependents) {
      const urgent = keys[after];
      if (urgent && compareKeys(urgent, key) < 0) key = urgent;
    }
    keys[index] = key;
  }
}

/** Looked up once an order, however many reasons ask. */
const orders = new WeakMap<readonly string[], ReadonlyMap<string, number>>();

function placesOf(order: readonly string[]): ReadonlyMap<string, number> {
  let places = orders.get(order);
  if (!places) orders.set(order, (places = new Map(order.map((id, place) => [id, place]))));
  return places;
}

/** By which rule `first` goes before `second`. */
export function aheadOf(first: Node, second: Node, input: PlanInput): Ahead {
  if (first.started || first.finished) return 'fact';
  if (first.pinned) return 'pin';
  if (first.frozen) return 'commitment';
  if (second.ins.some((edge) => edge.from === first)) return 'link';
  const places = input.order && placesOf(input.order);
  if (places && !second.pinned && !second.frozen) {
    const [a, b] = [places.get(first.id) ?? Infinity, places.get(second.id) ?? Infinity];
    if (a !== b) return a < b ? 'order' : 'needed';
  }
  const [earlier, later] = [stoodAt(first), stoodAt(second)];
  if (earlier !== later) return earlier < later ? 'previous' : 'needed';
  if (first.job.priority !== second.job.priority)
    return first.job.priority < second.job.priority ? 'priority' : 'needed';
  const [due, other] = [first.job.due ?? Infinity, second.job.due ?? Infinity];
  if (due !== other) return due < other ? 'due' : 'needed';
  return 'tail';
}

function stoodAt({ phase }: Node): number {
  return phase.commitment?.start ?? phase.previous?.start ?? Infinity;
}

function compareKeys(a: Key, b: Key): number {
  return (
    a.group - b.group ||
    difference(a.listed, b.listed) ||
    difference(a.order, b.order) ||
    a.priority - b.priority ||
    difference(a.due, b.due) ||
    a.tail - b.tail
  );
}

/** Infinity less Infinity is no number: equal keys are equal. */
function difference(a: number, b: number): number {
  return a === b ? 0 : a - b;
}

/** Length in slots of the clock: work counts as much longer as its hours are fewer. */
function clockLength(problem: Problem, node: Node): number {
  if (node.phase.duration.kind === 'elapsed') return node.length;
  const { own } = problem.hoursOf(node, node.crews[0] ?? null);
  const open = own.worked(problem.end) - own.worked(problem.begin);
  return open === 0 ? node.length : Math.round((node.length * problem.input.horizon) / open);
}
