import type { Interval } from './model.js';
import { slot, type Slot } from './slot.js';

/** A stretch in which a crew is taken by a phase. */
export interface Busy extends Interval {
  /** Index of the phase. */
  readonly owner: number;
}

/** What one crew is busy with: stretches in order that never overlap. */
export class CrewTimeline {
  private readonly busy: Busy[] = [];

  private indexAfter(t: Slot): number {
    let low = 0;
    let high = this.busy.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (this.busy[middle]!.to <= t) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** The first stretch that overlaps `from`–`to`. */
  firstIn(from: Slot, to: Slot): Busy | undefined {
    const next = this.busy[this.indexAfter(from)];
    return next && next.from < to ? next : undefined;
  }

  /**
   * Takes the crew. Where facts put it on two phases at once only what is still free is entered.
   * @returns index of the phase it was already taken by, if any
   */
  take(from: Slot, to: Slot, owner: number): number | undefined {
    const clash = this.firstIn(from, to);
    let at = from;
    for (let i = this.indexAfter(from); at < to; i++) {
      const next = this.busy[i];
      const until = next && next.from < to ? next.from : to;
      if (until > at) {
        this.busy.splice(i, 0, { from: at, to: until, owner });
        i++;
      }
      if (!next) break;
      at = slot(Math.max(at, next.to));
    }
    return clash?.owner;
  }

  /** Gives back everything a phase has taken. */
  release(owner: number): void {
    for (let i = this.busy.length - 1; i >= 0; i--) if (this.busy[i]!.owner === owner) this.busy.splice(i, 1);
  }
}
