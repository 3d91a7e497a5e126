import type { Slot } from './slot.js';

/** A stretch in which stock does not suffice; `to` is Infinity when no return is known. */
export interface Shortage {
  readonly from: number;
  readonly to: number;
}

/** How much of a pool is out at any time, as a step function. */
export class StockProfile {
  private readonly times: number[] = [-Infinity];
  private readonly levels: number[] = [0];

  constructor(readonly capacity: number) {}

  private indexAt(t: number): number {
    let low = 0;
    let high = this.times.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (this.times[middle]! <= t) low = middle + 1;
      else high = middle;
    }
    return low - 1;
  }

  private cut(t: number): number {
    const i = this.indexAt(t);
    if (this.times[i] === t) return i;
    this.times.splice(i + 1, 0, t);
    this.levels.splice(i + 1, 0, this.levels[i]!);
    return i + 1;
  }

  /** Removes a step that steps nowhere. */
  private mend(i: number): void {
    if (i === 0 || i >= this.times.length || this.levels[i] !== this.levels[i - 1]) return;
    this.times.splice(i, 1);
    this.levels.splice(i, 1);
  }

  /** Takes (or, with a negative quantity, gives back) stock from one instant to another, possibly Infinity. */
  add(from: number, to: number, quantity: number): void {
    if (!(to > from)) return;
    const first = this.cut(from);
    const end = to === Infinity ? this.times.length : this.cut(to);
    for (let i = first; i < end; i++) this.levels[i]! += quantity;
    this.mend(end);
    this.mend(first);
  }

  /** The first stretch inside `from`–`to` in which `quantity` more cannot be had, up to where it can be had again. */
  firstShort(from: Slot, to: number, quantity: number): Shortage | undefined {
    if (to <= from) return undefined;
    let start: number | undefined;
    for (let i = this.indexAt(from); i < this.times.length; i++) {
      if (start === undefined && this.times[i]! >= to) return undefined;
      const short = this.levels[i]! + quantity > this.capacity;
      if (short && start === undefined) start = Math.max(from, this.times[i]!);
      if (!short && start !== undefined) return { from: start, to: this.times[i]! };
    }
    return start === undefined ? undefined : { from: start, to: Infinity };
  }
}
