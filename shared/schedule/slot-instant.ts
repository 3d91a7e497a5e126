import { SLOT_MS, slot, type Slot } from './slot.js';

/** The first slot that starts at or after an instant. */
export function slotAtOrAfter(epochMs: number, horizonStartMs: number): Slot {
  return slot(Math.ceil((epochMs - horizonStartMs) / SLOT_MS) + 0);
}

/** The last slot that starts at or before an instant. */
export function slotAtOrBefore(epochMs: number, horizonStartMs: number): Slot {
  return slot(Math.floor((epochMs - horizonStartMs) / SLOT_MS));
}

/** The instant at which a slot starts, in epoch milliseconds. */
export function instantOfSlot(at: Slot, horizonStartMs: number): number {
  return horizonStartMs + at * SLOT_MS;
}
