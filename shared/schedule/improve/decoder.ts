/** Which way a pass goes: 0 from the start, 1 from the end (the network seen in a mirror). */
export type Direction = 0 | 1;

/**
 * Turns an order of activities into dates: one *generation pass*. The search knows nothing else of what it improves, so the plain
 * network of a textbook and a company's winter are searched by the same code.
 */
export interface Decoder {
  /** Number of activities; keys and starts have as many places. */
  readonly activities: number;
  /** 2 when passes can go from either end, 1 when only forward. */
  readonly directions: 1 | 2;
  /** No pass can be better than this. */
  readonly bound: number;
  /** How long each activity takes, in slots, where that does not depend on the dates; else an estimate. */
  readonly durations: Int32Array;
  /** How much of the scarce crews and equipment each activity takes while it runs, as a share of all there is. */
  readonly loads: Float64Array;
  /** Length of the longest way from an activity's start to the end, seen in a direction. */
  tails(direction: Direction): Int32Array;
  /**
   * Places every activity, in the order of its key, smallest first, as soon as what comes before it (seen in that direction) is placed.
   *
   * @param delay only activities that can start within so many slots of the earliest possible start are looked at: 0 never leaves
   *   anything idle that could work, Infinity keeps strictly to the keys (serial generation)
   * @param starts where the starts go, counted from that end
   * @returns how good it is; less is better
   */
  decode(direction: Direction, keys: Float64Array, delay: number, starts: Int32Array): number;
}
