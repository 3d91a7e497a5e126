import { neighbour, type Heading, type Lattice } from '../lattice/lattice.js';
import { bendsFit } from './bends-fit.js';

/** Which lines the long runs lie along. */
export type Runs = 'rows' | 'columns';

/** A stretch of the path from which a loop may be led out, to the hand that `by` says. */
interface Root {
  readonly from: number;
  readonly to: number;
  readonly by: number;
}

/** What a bare node counts that no cable lies beside. */
const FAR = 6;
const HEADINGS: readonly Heading[] = [0, 1, 2, 3];

/**
 * A path through a lattice, filled up by loops: a stretch from one node to the next is led out along two neighbouring lines as far
 * as both are free and back again. Every loop takes only nodes that nothing has taken, so nothing can cross.
 */
export class LoopFiller {
  private readonly next: Int32Array;
  private readonly before: Int32Array;
  private readonly taken: Uint8Array;
  private readonly first: number;

  constructor(
    private readonly lattice: Lattice,
    spine: readonly number[],
  ) {
    this.next = new Int32Array(lattice.free.length).fill(-1);
    this.before = new Int32Array(lattice.free.length).fill(-1);
    this.taken = new Uint8Array(lattice.free.length);
    this.first = spine[0]!;
    spine.forEach((node, i) => {
      this.taken[node] = 1;
      this.next[node] = spine[i + 1] ?? -1;
      this.before[node] = spine[i - 1] ?? -1;
    });
  }

  /** Hangs loops along the runs, or along both directions, the longest first, until none of the least length finds room. */
  hang(runs: Runs | 'both', least: number): void {
    // Roots by how far they reached when last looked at; what is taken since can only shorten that.
    const waiting: (Root[] | undefined)[] = [];
    const put = (root: Root): number => {
      const reach = this.reach(root);
      if (reach >= least) (waiting[reach] ??= []).push(root);
      return reach;
    };
    const putBoth = (from: number, to: number): number => {
      const upright = to - from !== 1 && from - to !== 1;
      if (runs !== 'both' && (runs === 'rows') !== upright) return 0;
      const step = upright ? 1 : this.lattice.columns;
      const [one, other] = [put({ from, to, by: step }), put({ from, to, by: -step })];
      return one > other ? one : other;
    };
    for (let node = this.first; this.next[node] !== -1; node = this.next[node]!)
      putBoth(node, this.next[node]!);
    for (let reach = waiting.length - 1; reach >= least;) {
      const roots = waiting[reach];
      if (!roots) {
        reach--;
        continue;
      }
      waiting[reach] = undefined;
      for (const [i, root] of roots.entries()) {
        if (this.next[root.from] !== root.to || put(root) !== reach) continue;
        waiting[reach]!.pop();
        const longer = this.lead(root, reach).reduce(
          (most, [from, to]) => Math.max(most, putBoth(from, to)),
          0,
        );
        if (longer <= reach) continue;
        // What a new loop opened up goes first.
        waiting[reach] = [...roots.slice(i + 1), ...(waiting[reach] ?? [])];
        reach = longer;
        break;
      }
    }
  }

  /** The nodes at which the path begins, turns and ends. */
  corners(): number[] {
    const out = [this.first];
    let before = 0;
    for (let node = this.first; this.next[node] !== -1; node = this.next[node]!) {
      const step = this.next[node]! - node;
      if (before !== 0 && step !== before) out.push(node);
      before = step;
      if (this.next[this.next[node]!] === -1) out.push(this.next[node]!);
    }
    return out;
  }

  /** How many free nodes no cable lies at; those with none beside them either count much more. */
  bare(): number {
    let sum = 0;
    for (let node = 0; node < this.taken.length; node++) {
      if (!this.lattice.free[node] || this.taken[node]) continue;
      sum += HEADINGS.some((heading) => this.taken[neighbour(this.lattice, node, heading)] === 1) ? 1 : FAR;
    }
    return sum;
  }

  /** How many stretches a loop from a root can reach out; 0 where its bends or those beside it would find no room. */
  private reach(root: Root): number {
    const reach = this.freeReach(root);
    return reach === 0 || this.lattice.bend === 0 || this.bendsFit(root, reach) ? reach : 0;
  }

  /** Whether the path has room for its bends from two corners before a loop to two corners after it. */
  private bendsFit({ from, to, by }: Root, reach: number): boolean {
    const out = [from + by * reach, to + by * reach];
    const way = [
      ...this.cornersFrom(from, this.before).reverse(),
      ...out,
      ...this.cornersFrom(to, this.next),
    ];
    return bendsFit(this.lattice, way);
  }

  /** A node and the two next corners of the path from it, forth or back. */
  private cornersFrom(node: number, onwards: Int32Array): number[] {
    const out = [node];
    let step = 0;
    for (let at = node; out.length < 3; at = onwards[at]!) {
      const next = onwards[at]!;
      if (next === -1) {
        if (at !== node) out.push(at);
        break;
      }
      if (at !== node && next - at !== step) out.push(at);
      step = next - at;
    }
    return out;
  }

  private freeReach({ from, to, by }: Root): number {
    const { taken } = this;
    const { alongRow, alongColumn } = this.lattice;
    const level = by === 1 || by === -1;
    const [out, across] = level ? [alongRow, alongColumn] : [alongColumn, alongRow];
    const back = by < 0 ? by : 0;
    const first = from < to ? from : to;
    let reach = 0;
    for (let p = from, q = to, beside = first; !taken[p + by] && !taken[q + by]; p += by, q += by) {
      if (!out[p + back] || !out[q + back] || !across[(beside += by)]) break;
      reach++;
    }
    return reach;
  }

  /** Leads a loop out and back; its stretches in turn. */
  private lead({ from, to, by }: Root, reach: number): (readonly [number, number])[] {
    const stretches: (readonly [number, number])[] = [];
    let last = from;
    const on = (node: number): void => {
      this.next[last] = node;
      this.before[node] = last;
      this.taken[node] = 1;
      stretches.push([last, node]);
      last = node;
    };
    for (let k = 1; k <= reach; k++) on(from + by * k);
    for (let k = reach; k >= 1; k--) on(to + by * k);
    on(to);
    return stretches;
  }
}
