import { mergeIntervals, subtractIntervals } from './intervals.js';
import type { Interval } from './model.js';
import { slot, type Slot, type SlotCount } from './slot.js';

/** Far enough before any horizon to stand for "since always". */
const LONG_AGO = -(2 ** 30);

/** Two to this power slots share an entry of the table that says where to look. */
const BUCKET = 6;

/**
 * Open time as sorted stretches with prefix sums in typed arrays, so that counting, adding and snapping take a table look-up and a few
 * steps. `worked(t)` counts the open slots before `t`; every other question is asked of that one monotone function.
 */
export class CompiledCalendar {
  /** Number of stretches. */
  readonly count: number;
  /** Number of open slots. */
  readonly total: SlotCount;
  /** Length of the longest stretch. */
  readonly longest: SlotCount;
  private readonly from: Int32Array;
  private readonly to: Int32Array;
  private readonly before: Int32Array;
  /** For each bucket from the second stretch on: the last stretch that starts at or before its first slot. */
  private readonly table: Int32Array;

  private constructor(readonly open: readonly Interval[]) {
    const count = open.length;
    this.count = count;
    this.from = new Int32Array(count);
    this.to = new Int32Array(count);
    this.before = new Int32Array(count);
    let sum = 0;
    let longest = 0;
    for (let i = 0; i < count; i++) {
      const { from, to } = open[i]!;
      this.from[i] = from;
      this.to[i] = to;
      this.before[i] = sum;
      sum += to - from;
      if (to - from > longest) longest = to - from;
    }
    this.total = sum;
    this.longest = longest;
    this.table = tableOf(this.from);
  }

  /** Compiles stretches in any order; those that touch or overlap are joined. */
  static of(open: readonly Interval[]): CompiledCalendar {
    return new CompiledCalendar(mergeIntervals(open));
  }

  /** What is left outside merged `closed` stretches. */
  without(closed: readonly Interval[]): CompiledCalendar {
    return closed.length === 0 ? this : new CompiledCalendar(subtractIntervals(this.open, closed));
  }

  /** Open without a break until the horizon's end: cures and other waits. */
  static always(horizon: SlotCount): CompiledCalendar {
    return new CompiledCalendar([{ from: slot(LONG_AGO), to: slot(horizon) }]);
  }

  /** Index of the last stretch that starts at or before `t`; -1 when none does. */
  private indexAt(t: number): number {
    const { from, table, count } = this;
    if (count === 0 || t < from[0]!) return -1;
    if (count === 1 || t < from[1]!) return 0;
    const bucket = (t - from[1]!) >> BUCKET;
    let i = bucket < table.length ? table[bucket]! : count - 1;
    while (i + 1 < count && from[i + 1]! <= t) i++;
    return i;
  }

  /** Open slots before `t`. */
  worked(t: number): SlotCount {
    const i = this.indexAt(t);
    if (i < 0) return 0;
    const end = this.to[i]!;
    return this.before[i]! + (t < end ? t : end) - this.from[i]!;
  }

  /** The open slot that has `count` open slots before it; null past the end, the first slot for negative counts. */
  at(count: SlotCount): Slot | null {
    if (count >= this.total) return null;
    const wanted = count < 0 ? 0 : count;
    return this.slotFrom(0, wanted);
  }

  /** The slot with `wanted` before it, looked for from a stretch on that begins no later: a few steps, then by halves. */
  private slotFrom(first: number, wanted: number): Slot {
    const { before, count } = this;
    let low = first;
    const near = low + 8 < count ? low + 8 : count;
    while (low + 1 < near && before[low + 1]! <= wanted) low++;
    if (low + 1 === near && near < count && before[near]! <= wanted) {
      let high = count;
      low = near;
      while (high - low > 1) {
        const middle = (low + high) >>> 1;
        if (before[middle]! <= wanted) low = middle;
        else high = middle;
      }
    }
    return (this.from[low]! + wanted - before[low]!) as Slot;
  }

  /** The earliest instant by which `count` slots are worked in all; null when there are fewer. */
  reach(count: SlotCount): Slot | null {
    const last = this.at(count - 1);
    return last === null ? null : ((last + 1) as Slot);
  }

  isOpen(t: number): boolean {
    const i = this.indexAt(t);
    return i >= 0 && t < this.to[i]!;
  }

  /** `t` itself when open, else the next open slot; null when there is none. */
  snap(t: number): Slot | null {
    const i = this.indexAt(t);
    if (i >= 0 && t < this.to[i]!) return t as Slot;
    return i + 1 < this.count ? (this.from[i + 1]! as Slot) : null;
  }

  /** Like `snap`, but an instant at which a stretch ends counts as open: for things of no length. */
  snapInstant(t: number): Slot | null {
    const i = this.indexAt(t);
    if (i >= 0 && t <= this.to[i]!) return t as Slot;
    return i + 1 < this.count ? (this.from[i + 1]! as Slot) : null;
  }

  /** End of the stretch in which an open slot lies. */
  endOf(t: number): Slot {
    return this.to[this.indexAt(t)]! as Slot;
  }

  /** Finish of `count` slots of work begun at `t`; `t` itself for no work. */
  add(t: number, count: SlotCount): Slot | null {
    if (count === 0) return t as Slot;
    const i = this.indexAt(t);
    const end = i < 0 ? 0 : this.to[i]!;
    const worked = i < 0 ? 0 : this.before[i]! + (t < end ? t : end) - this.from[i]!;
    const last = worked + count - 1;
    if (last >= this.total) return null;
    return (this.slotFrom(i < 0 ? 0 : i, last) + 1) as Slot;
  }

  /** Latest start from which `count` slots are worked by `t`; null when too few are open before it. */
  subtract(t: number, count: SlotCount): Slot | null {
    if (count === 0) return t as Slot;
    const left = this.worked(t) - count;
    return left < 0 ? null : this.at(left);
  }

  /** Earliest start at or after `t` with `count` open slots in one stretch. */
  gap(t: number, count: SlotCount): Slot | null {
    if (count > this.longest) return null;
    const i = this.indexAt(t);
    for (let k = i < 0 ? 0 : i; k < this.count; k++) {
      const begin = this.from[k]!;
      const from = t > begin ? t : begin;
      const to = this.to[k]!;
      if (to - from >= count && from < to) return from as Slot;
    }
    return null;
  }

  /** Latest start of `count` open slots in one stretch that ends by `t`. */
  gapBefore(t: number, count: SlotCount): Slot | null {
    if (count > this.longest) return null;
    for (let i = this.indexAt(t); i >= 0; i--) {
      const end = this.to[i]!;
      const to = t < end ? t : end;
      if (to - this.from[i]! >= count) return (to - count) as Slot;
    }
    return null;
  }

  /** Open stretches between two instants. */
  between(from: number, to: number): Interval[] {
    const parts: Interval[] = [];
    const i = this.indexAt(from);
    for (let k = i < 0 ? 0 : i; k < this.count && this.from[k]! < to; k++) {
      const a = Math.max(from, this.from[k]!);
      const b = Math.min(to, this.to[k]!);
      if (b > a) parts.push({ from: a as Slot, to: b as Slot });
    }
    return parts;
  }
}

/** The first stretch may begin long ago and has no part in the table. */
function tableOf(from: Int32Array): Int32Array {
  if (from.length < 2) return new Int32Array(0);
  const first = from[1]!;
  const table = new Int32Array(((from[from.length - 1]! - first) >> BUCKET) + 1);
  let i = 1;
  for (let bucket = 0; bucket < table.length; bucket++) {
    while (i + 1 < from.length && from[i + 1]! - first <= bucket << BUCKET) i++;
    table[bucket] = i;
  }
  return table;
}
