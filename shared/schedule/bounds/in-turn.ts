import type { Slot } from '../slot.js';

/**
 * For k = 1, 2 … the earliest slot at which k jobs can be finished that share something limited. The k-th to finish has by then had its own
 * need met, and so have those before it; that is at least the need of the k jobs that need least.
 *
 * @param needs what each job takes before it is finished
 * @param whenGiven the earliest slot by which so much can have been given
 */
export function inTurn(needs: Iterable<number>, whenGiven: (total: number) => Slot): Slot[] {
  let total = 0;
  return [...needs]
    .sort((a, b) => a - b)
    .map((need) => {
      total += need;
      return whenGiven(total);
    });
}

/** Of several bounds for the first, second … job the greatest at every place. */
export function greatest(...bounds: readonly (readonly Slot[])[]): Slot[] {
  const [first = [], ...others] = bounds;
  return first.map((at, k) => others.reduce<Slot>((most, one) => (one[k]! > most ? one[k]! : most), at));
}
