import type { ItemView } from './job-view.js';

/** What a tape, a level and a thermometer show on a well-built entry, by item. */
const READINGS: Record<string, (frostInches: number) => number | number[]> = {
  'footing-depth': (frost) => [frost + 1, frost + 1.5, frost + 2],
  'spoil-back': () => 2.5,
  'bar-cover': () => 3.25,
  'placed-temperature': () => 62,
  'riser-heights': () => [7.25, 7.25, 7.375],
  treads: () => [12, 12.125],
  'landing-slope': () => 2,
  'base-thickness': () => 4,
  'base-temperature': () => 60,
  spacing: () => [3, 3.125, 3.25],
  setback: () => 3.5,
  'cold-lead-free': () => 10,
  'cable-cover': () => [1.75, 2],
  'cable-depth': () => [2.25, 2.375],
  'bed-lowest': () => 54,
  'face-temperature': () => 52,
  'run-amperes': () => 10.4,
};

/** An entry of `releaseHoldPoint`. */
export interface GivenValue {
  readonly itemId: string;
  readonly value?: number;
  readonly values?: readonly number[];
  readonly confirmed?: boolean;
}

/**
 * Values within the limits for the items of a hold point.
 *
 * @throws Error when an item to measure is unknown here; add its reading above.
 */
export function goodValues(items: readonly ItemView[], frostInches: number): GivenValue[] {
  return items.map((item) => {
    if (item.unit === null) return { itemId: item.id, confirmed: true };
    const reading = READINGS[item.id]?.(frostInches);
    if (reading === undefined)
      throw new Error(`No reading is known for "${item.label}" (${item.id}, ${item.limitText})`);
    if (item.many) return { itemId: item.id, values: Array.isArray(reading) ? reading : [reading] };
    return { itemId: item.id, value: Array.isArray(reading) ? (reading[0] ?? 0) : reading };
  });
}
