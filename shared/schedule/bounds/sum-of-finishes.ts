import type { Slot, SlotCount } from '../slot.js';

/**
 * What the finishes of several jobs, each counted from `now`, must add up to at least, by two bounds at once: each job by itself, and the
 * first, second … of them to finish. Sorted finishes keep both, so the greater counts at every place.
 *
 * @param alone the earliest finish of each job with nobody to wait for
 * @param inTurn the earliest slot at which one, two … of them can be finished; as many as jobs
 */
export function sumOfFinishes(alone: readonly Slot[], inTurn: readonly Slot[], now: Slot): SlotCount {
  return [...alone]
    .sort((a, b) => a - b)
    .reduce<number>((sum, at, k) => sum + Math.max(0, at - now, inTurn[k]! - now), 0);
}
