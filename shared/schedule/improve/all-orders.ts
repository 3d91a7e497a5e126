import type { SearchOptions, SearchResult } from './population-search.js';
import type { Decoder } from './decoder.js';

/**
 * Every order that keeps to the given predecessors, as keys: for few activities it is cheaper to try all than to search.
 *
 * @returns undefined when there are more than `most`
 */
export function allOrders(
  predecessors: readonly (readonly number[])[],
  most: number,
): Float64Array[] | undefined {
  const orders: Float64Array[] = [];
  const keys = new Float64Array(predecessors.length);
  const placed = predecessors.map(() => false);
  const place = (rank: number): boolean => {
    if (rank === predecessors.length) {
      if (orders.length === most) return false;
      orders.push(Float64Array.from(keys));
      return true;
    }
    for (let i = 0; i < predecessors.length; i++) {
      if (placed[i]! || predecessors[i]!.some((before) => !placed[before]!)) continue;
      placed[i] = true;
      keys[i] = rank;
      const few = place(rank + 1);
      placed[i] = false;
      if (!few) return false;
    }
    return true;
  };
  return place(0) ? orders : undefined;
}

/** Tries orders one after the other and keeps the best. */
export function tryOrders(
  decoder: Decoder,
  orders: readonly Float64Array[],
  options: SearchOptions,
): SearchResult {
  const starts = new Int32Array(decoder.activities);
  let best: { keys: Float64Array; fitness: number } | undefined;
  let passes = 0;
  for (const keys of orders) {
    if (best && (best.fitness <= decoder.bound || options.stop?.() === true)) break;
    const fitness = decoder.decode(0, keys, Infinity, starts);
    passes++;
    if (!best || fitness < best.fitness) best = { keys, fitness };
    options.onPass?.(passes, best.fitness);
  }
  return { ...best!, passes };
}
