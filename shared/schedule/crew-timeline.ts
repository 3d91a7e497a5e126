import type { CompiledCalendar } from './compiled-calendar.js';
import type { Interval } from './model.js';
import { slot, type Slot, type SlotCount } from './slot.js';

/** A stretch in which a crew is taken by a phase. */
export interface Busy extends Interval {
  /** Index of the phase. */
  readonly owner: number;
}

/** How much of a gap a phase needs at least: working slots of the crew, or slots of the clock. */
export interface Need {
  readonly slots: SlotCount;
  readonly working: boolean;
}

/** What one crew is busy with: stretches in order that never overlap. */
export class CrewTimeline {
  private readonly busy: (Busy & { readonly workedFrom: number; readonly workedTo: number })[] = [];

  constructor(private readonly hours: CompiledCalendar) {}

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
   * When something overlaps `from`–`to`: the last stretch before the next gap that could be long enough.
   * Gaps that hold too little time are passed over, as no phase of that need fits there.
   */
  blockedUntil(from: Slot, to: Slot, need: Need): Busy | undefined {
    let i = this.indexAfter(from);
    const first = this.busy[i];
    if (!first || first.from >= to) return undefined;
    for (; i + 1 < this.busy.length; i++) {
      const here = this.busy[i]!;
      const next = this.busy[i + 1]!;
      const gap = need.working ? next.workedFrom - here.workedTo : next.from - here.to;
      if (gap >= need.slots) break;
    }
    return this.busy[i];
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
        const workedFrom = this.hours.worked(at);
        const workedTo = this.hours.worked(until);
        this.busy.splice(i, 0, { from: at, to: until, owner, workedFrom, workedTo });
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
