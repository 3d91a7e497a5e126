declare const slotBrand: unique symbol;

/**
 * An instant on the planning axis: a whole number of 15-minute steps from the horizon's start instant.
 * Slots count elapsed time, so a change of clocks neither adds nor removes one. May be negative (before the horizon).
 */
export type Slot = number & { readonly [slotBrand]: 'Slot' };

/** A length in 15-minute steps; whether it counts working or elapsed time is said where it is used. */
export type SlotCount = number;

/** Length of one slot in minutes. */
export const SLOT_MINUTES = 15;

/** Length of one slot in milliseconds. */
export const SLOT_MS = SLOT_MINUTES * 60_000;

/**
 * Brands a whole number as a slot.
 * @throws RangeError when the number is not a safe integer
 */
export function slot(value: number): Slot {
  if (!Number.isSafeInteger(value)) {
    throw new RangeError(
      `A slot is a whole number of 15-minute steps, got ${value}: round at the edge first.`,
    );
  }
  return value as Slot;
}
