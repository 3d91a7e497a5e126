import type { Direction } from './decoder.js';

/** One schedule of a population. */
export interface Member {
  /** Which end its starts are counted from. */
  readonly direction: Direction;
  readonly starts: Int32Array;
  /** Less is better. */
  readonly fitness: number;
  /** Latest finish, counted from the same end. */
  readonly end: number;
  /** Its order, where the starts alone would not give it again. */
  readonly keys: Float64Array | undefined;
}

/** Wraps what a pass gave. */
export function memberOf(
  direction: Direction,
  starts: Int32Array,
  durations: Int32Array,
  fitness: number,
  keys?: Float64Array,
): Member {
  let end = 0;
  for (let i = 0; i < starts.length; i++) end = Math.max(end, starts[i]! + durations[i]!);
  return { direction, starts, fitness, end, keys: keys && Float64Array.from(keys) };
}
