import type { Extent } from './lanes.js';

/** Where a bar's name is written. */
export type LabelPlace = 'inside' | 'after' | 'none';

/** Width of a letter of the bar's lettering, in pixels, on average and rounded up. */
const LETTER = 6.4;
const MARGIN = 14;

/** Pixels that a name needs. */
export function labelWidth(name: string): number {
  return Math.ceil(name.length * LETTER) + MARGIN;
}

/** Inside the bar where it fits, else after it where the lane is free, else nowhere: the bar still says it when focused. */
export function placeLabel(name: string, bar: Extent, nextLeft: number): LabelPlace {
  const needed = labelWidth(name);
  if (bar.right - bar.left >= needed) return 'inside';
  return nextLeft - bar.right >= needed ? 'after' : 'none';
}
