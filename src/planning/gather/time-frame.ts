import { instantOfSlot, slotAtOrAfter, slotAtOrBefore } from '../../../shared/schedule/slot-instant.js';
import { SLOT_MINUTES, SLOT_MS, type Slot, type SlotCount } from '../../../shared/schedule/slot.js';

const DAY_MS = 24 * 60 * 60 * 1000;

/** Facts that lie further back are still planned with, but their open hours are not expanded. */
const MOST_DAYS_BACK = 60;

/** How far ahead the first try looks; it is doubled while work does not fit. */
export const FIRST_HORIZON_DAYS = 400;

/** The planning axis: where slot 0 lies and how far it reaches. Turns instants into slots and back. */
export class TimeFrame {
  readonly startMs: number;
  readonly slots: SlotCount;
  /** The present, up to the next slot: unstarted work never starts before now. */
  readonly now: Slot;

  /**
   * Starts a day before now, or with the earliest fact of the live jobs where that is earlier (60 days back at most).
   */
  constructor(
    readonly nowMs: number,
    earliestFactMs: number,
    readonly days: number,
  ) {
    const start = Math.max(Math.min(earliestFactMs, nowMs - DAY_MS), nowMs - MOST_DAYS_BACK * DAY_MS);
    this.startMs = Math.floor(start / DAY_MS) * DAY_MS;
    this.slots = (days * DAY_MS) / SLOT_MS;
    this.now = slotAtOrAfter(nowMs, this.startMs);
  }

  /** The slot of an instant, rounded up: dates in the future, and facts, whose order rounding alike keeps. */
  at(instant: Date | number): Slot {
    return slotAtOrAfter(Number(instant), this.startMs);
  }

  /** The slot of an instant, rounded down: ends that must not be overrun. */
  before(instant: Date | number): Slot {
    return slotAtOrBefore(Number(instant), this.startMs);
  }

  /** The instant of a slot in epoch milliseconds. */
  ms(slot: Slot): number {
    return instantOfSlot(slot, this.startMs);
  }

  /** The end of the horizon in epoch milliseconds. */
  get endMs(): number {
    return this.startMs + this.slots * SLOT_MS;
  }
}

/** Minutes as slots, rounded up. */
export const slotsOf = (minutes: number): SlotCount => Math.ceil(minutes / SLOT_MINUTES) + 0;
