import { compareIds } from './by-id.js';
import { CompiledCalendar } from './compiled-calendar.js';
import { mergeIntervals } from './intervals.js';
import type { Interval, WeatherCause, WeatherSet } from './model.js';
import type { Slot } from './slot.js';

/** A weather hold with the set it comes from. */
export interface CoverHold extends Interval {
  readonly weatherId: string;
  readonly cause: WeatherCause;
}

/** The weather over a phase: several sets laid over each other, closing holds apart from what lies beyond the forecast. */
export class WeatherCover {
  /** Closed time without regard to cause. */
  readonly closed: readonly Interval[];
  /** The same, to be counted in. */
  readonly closedTime: CompiledCalendar;
  private readonly closing: readonly CoverHold[];
  private readonly unknown: CompiledCalendar;

  constructor(readonly sets: readonly WeatherSet[]) {
    const holds: CoverHold[] = sets.flatMap((set) =>
      set.holds.filter((h) => h.to > h.from).map((h) => ({ ...h, weatherId: set.id })),
    );
    this.closing = holds.filter((h) => h.cause.kind !== 'unknown').sort(byStartThenLongest);
    this.closed = mergeIntervals(this.closing);
    this.closedTime = CompiledCalendar.of(this.closed);
    this.unknown = CompiledCalendar.of(holds.filter((h) => h.cause.kind === 'unknown'));
  }

  /** The hold that closes first inside a stretch; of several at once the one that lasts longest. */
  firstIn(from: Slot, to: Slot): CoverHold | undefined {
    let best: CoverHold | undefined;
    for (const hold of this.closing) {
      if (hold.from >= to) break;
      if (hold.to <= from) continue;
      if (!best || (hold.from <= from && hold.to > best.to)) best = hold;
      if (hold.from > from) break;
    }
    return best;
  }

  /** Whether any part of the stretch (at least its first slot) lies beyond the forecast. */
  unknownIn(from: Slot, to: Slot): boolean {
    const next = this.unknown.snap(from);
    return next !== null && (next < to || next === from);
  }
}

function byStartThenLongest(a: CoverHold, b: CoverHold): number {
  return a.from - b.from || b.to - a.to || compareIds(a.weatherId, b.weatherId);
}
