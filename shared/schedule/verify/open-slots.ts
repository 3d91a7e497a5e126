import type { Interval } from '../model.js';

/** Open time as one byte a slot with running counts: slow and plain, so that the checker shares nothing with what it checks. */
export class OpenSlots {
  private readonly open: Uint8Array;
  private readonly counts: Int32Array;

  constructor(
    intervals: readonly Interval[],
    closed: readonly Interval[],
    private readonly first: number,
    end: number,
  ) {
    this.open = new Uint8Array(end - first);
    for (const [list, value] of [
      [intervals, 1],
      [closed, 0],
    ] as const) {
      for (const { from, to } of list) {
        for (let t = Math.max(from, first); t < Math.min(to, end); t++) this.open[t - first] = value;
      }
    }
    this.counts = new Int32Array(end - first + 1);
    this.open.forEach((value, i) => (this.counts[i + 1] = this.counts[i]! + value));
  }

  isOpen(t: number): boolean {
    return this.open[t - this.first] === 1;
  }

  /** Open slots before `t`. */
  before(t: number): number {
    return this.counts[Math.max(0, Math.min(t - this.first, this.counts.length - 1))]!;
  }

  /** Open slots from one instant to another. */
  count(from: number, to: number): number {
    return this.before(to) - this.before(from);
  }
}
