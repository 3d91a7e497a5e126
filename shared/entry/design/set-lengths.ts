import type { Feet } from '../../units/length.js';
import { feet } from '../../units/length.js';

/** Heated lengths that sets are made in, ft: invented but plausible; cable is made to any other length on order. */
const SET_LENGTHS: readonly number[] = [
  60, 80, 100, 120, 140, 160, 180, 200, 225, 250, 275, 300, 325, 350, 375, 400, 450, 500, 550, 600,
];

/** Lengths within a range, shortest first; where none is made so, one to order in the middle of it. */
export function lengthsWithin(shortest: Feet, longest: Feet): Feet[] {
  const made = SET_LENGTHS.filter((length) => length >= shortest && length <= longest);
  return made.length > 0 ? made.map(feet) : [feet(Math.floor((shortest + longest) / 2))];
}
