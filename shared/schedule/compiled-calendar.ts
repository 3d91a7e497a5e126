import { mergeIntervals, subtractIntervals } from './intervals.js';
import type { Interval } from './model.js';
import { slot, type Slot, type SlotCount } from './slot.js';

/** Far enough before any horizon to stand for "since always". */
const LONG_AGO = -(2 ** 30);

/**
 * Open time as sorted stretches with prefix sums, so that counting, adding and snapping take O(log n).
 * `worked(t)` counts the open slots before `t`; every other question is asked of that one monotone function.
 */
export class CompiledCalendar {
  /** Number of open slots. */
  readonly total: SlotCount;
  /** Length of the longest stretch. */
  readonly longest: SlotCount;
  private readonly before: readonly SlotCount[];

  private constructor(readonly open: readonly Interval[]) {
    const before: number[] = [];
    let sum = 0;
    let longest = 0;
    for (const { from, to } of open) {
      before.push(sum);
      sum += to - from;
      longest = Math.max(longest, to - from);
    }
    this.before = before;
    this.total = sum;
    this.longest = longest;
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
  private indexAt(t: Slot): number {
    let low = 0;
    let high = this.open.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (this.open[middle]!.from <= t) low = middle + 1;
      else high = middle;
    }
    return low - 1;
  }

  /** Open slots before `t`. */
  worked(t: Slot): SlotCount {
    const i = this.indexAt(t);
    if (i < 0) return 0;
    const stretch = this.open[i]!;
    return this.before[i]! + Math.min(t, stretch.to) - stretch.from;
  }

  /** The open slot that has `count` open slots before it; null past the end, the first slot for negative counts. */
  at(count: SlotCount): Slot | null {
    if (count >= this.total) return null;
    const wanted = Math.max(0, count);
    let low = 0;
    let high = this.open.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (this.before[middle]! <= wanted) low = middle + 1;
      else high = middle;
    }
    return slot(this.open[low - 1]!.from + wanted - this.before[low - 1]!);
  }

  /** The earliest instant by which `count` slots are worked in all; null when there are fewer. */
  reach(count: SlotCount): Slot | null {
    const last = this.at(count - 1);
    return last === null ? null : slot(last + 1);
  }

  isOpen(t: Slot): boolean {
    const i = this.indexAt(t);
    return i >= 0 && t < this.open[i]!.to;
  }

  /** `t` itself when open, else the next open slot; null when there is none. */
  snap(t: Slot): Slot | null {
    const i = this.indexAt(t);
    if (i >= 0 && t < this.open[i]!.to) return t;
    return this.open[i + 1]?.from ?? null;
  }

  /** Like `snap`, but an instant at which a stretch ends counts as open: for things of no length. */
  snapInstant(t: Slot): Slot | null {
    const i = this.indexAt(t);
    if (i >= 0 && t <= this.open[i]!.to) return t;
    return this.open[i + 1]?.from ?? null;
  }

  /** Finish of `count` slots of work begun at `t`; `t` itself for no work. */
  add(t: Slot, count: SlotCount): Slot | null {
    return count === 0 ? t : this.reach(this.worked(t) + count);
  }

  /** Latest start from which `count` slots are worked by `t`; null when too few are open before it. */
  subtract(t: Slot, count: SlotCount): Slot | null {
    if (count === 0) return t;
    const left = this.worked(t) - count;
    return left < 0 ? null : this.at(left);
  }

  /** Earliest start at or after `t` with `count` open slots in one stretch. */
  gap(t: Slot, count: SlotCount): Slot | null {
    if (count > this.longest) return null;
    for (let i = Math.max(0, this.indexAt(t)); i < this.open.length; i++) {
      const stretch = this.open[i]!;
      const from = Math.max(t, stretch.from);
      if (stretch.to - from >= count && from < stretch.to) return slot(from);
    }
    return null;
  }

  /** Latest start of `count` open slots in one stretch that ends by `t`. */
  gapBefore(t: Slot, count: SlotCount): Slot | null {
    if (count > this.longest) return null;
    for (let i = this.indexAt(t); i >= 0; i--) {
      const stretch = this.open[i]!;
      const to = Math.min(t, stretch.to);
      if (to - stretch.from >= count) return slot(to - count);
    }
    return null;
  }

  /** Open stretches between two instants. */
  between(from: Slot, to: Slot): Interval[] {
    const parts: Interval[] = [];
    for (let i = Math.max(0, this.indexAt(from)); i < this.open.length && this.open[i]!.from < to; i++) {
      const stretch = this.open[i]!;
      const part = { from: slot(Math.max(from, stretch.from)), to: slot(Math.min(to, stretch.to)) };
      if (part.to > part.from) parts.push(part);
    }
    return parts;
  }
}
