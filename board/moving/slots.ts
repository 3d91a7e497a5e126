import { slot, type Slot } from '../../shared/schedule/slot.js';
import type { SlotScale } from '../planning/shifts.js';

/** The moment at which a slot begins, in milliseconds since 1970. */
export const momentOf = (at: Slot, { startsAt, slotMinutes }: SlotScale): number =>
  Date.parse(startsAt) + at * slotMinutes * 60_000;

/** The slot nearest to a moment. */
export const nearestSlot = (moment: number, { startsAt, slotMinutes }: SlotScale): Slot =>
  slot(Math.round((moment - Date.parse(startsAt)) / (slotMinutes * 60_000)));
