/** Bits a lane can have: the more resources fit one word, the fewer words a look takes. */
const WIDTHS = [8, 16, 31] as const;

/**
 * What is free of several resources at every slot, several to a word: each resource has a lane with a guard bit on top. Taking the demand
 * from a word with all guards set leaves every guard standing just when all lanes have enough, so one subtraction compares them all.
 */
export class ResourceProfile {
  private readonly words: number;
  private readonly guard: number;
  private readonly full: Int32Array;
  private readonly demand: Int32Array;
  private readonly free: Int32Array;
  private dirty: number;

  /**
   * @param demands what each activity takes of each resource, no more than there is
   * @param slots longest stretch of time ever looked at
   * @throws RangeError for a capacity too large to count (2^30 and up) or a demand above its capacity
   */
  constructor(capacities: readonly number[], demands: readonly (readonly number[])[], slots: number) {
    const most = Math.max(0, ...capacities);
    const width = WIDTHS.find((bits) => most < 2 ** (bits - 1));
    if (width === undefined) throw new RangeError(`A quantity of ${most} is more than can be counted here.`);
    const lanes = Math.floor(32 / width);
    this.words = Math.max(1, Math.ceil(capacities.length / lanes));
    let guard = 0;
    for (let lane = 0; lane < lanes; lane++) guard |= 1 << (lane * width + width - 1);
    this.guard = guard;
    this.full = this.packed(capacities, lanes, width);
    this.demand = new Int32Array(demands.length * this.words);
    demands.forEach((row, i) => {
      if (row.some((taken, r) => taken > capacities[r]!)) {
        throw new RangeError(`Activity ${i} takes more than there is.`);
      }
      this.demand.set(this.packed(row, lanes, width), i * this.words);
    });
    this.free = new Int32Array((slots + 1) * this.words);
    this.dirty = slots + 1;
  }

  private packed(values: readonly number[], lanes: number, width: number): Int32Array {
    const words = new Int32Array(this.words);
    values.forEach((value, r) => (words[Math.floor(r / lanes)]! |= value << ((r % lanes) * width)));
    return words;
  }

  /** Gives everything back. */
  clear(): void {
    const end = this.dirty * this.words;
    if (this.words === 1) this.free.fill(this.full[0]!, 0, end);
    else for (let at = 0; at < end; at += this.words) this.free.set(this.full, at);
    this.dirty = 0;
  }

  /** The earliest start at or after `at` from which an activity has what it takes for `duration` slots. */
  earliest(activity: number, at: number, duration: number): number {
    return this.words === 1
      ? this.earliestInOne(activity, at, duration)
      : this.earliestInAll(activity, at, duration);
  }

  private earliestInOne(activity: number, at: number, duration: number): number {
    const { free, guard } = this;
    const taken = this.demand[activity]!;
    let start = at;
    let end = start + duration;
    for (let t = start; t < end; t++) {
      if ((((free[t]! | guard) - taken) & guard) !== guard) {
        start = t + 1;
        end = start + duration;
      }
    }
    return start;
  }

  private earliestInAll(activity: number, at: number, duration: number): number {
    const { free, guard, words, demand } = this;
    let start = at;
    let end = start + duration;
    for (let t = start; t < end; t++) {
      for (let w = 0; w < words; w++) {
        if ((((free[t * words + w]! | guard) - demand[activity * words + w]!) & guard) !== guard) {
          start = t + 1;
          end = start + duration;
          break;
        }
      }
    }
    return start;
  }

  /** Takes what an activity needs from `start` for `duration` slots. */
  take(activity: number, start: number, duration: number): void {
    const { free, words, demand } = this;
    const end = start + duration;
    if (words === 1) {
      const taken = demand[activity]!;
      for (let t = start; t < end; t++) free[t]! -= taken;
    } else {
      for (let t = start; t < end; t++) {
        for (let w = 0; w < words; w++) free[t * words + w]! -= demand[activity * words + w]!;
      }
    }
    if (end > this.dirty) this.dirty = end;
  }
}
