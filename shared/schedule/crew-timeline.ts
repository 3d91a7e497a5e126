import type { CompiledCalendar } from './compiled-calendar.js';
import type { Interval } from './model.js';
import type { Slot, SlotCount } from './slot.js';

/** Words a stretch takes in the timeline's array: from, to, working slots before each, owner. */
const WIDTH = 5;

/**
 * What one crew is busy with: stretches in order that never overlap, side by side in one array of whole numbers. A stretch is spoken of
 * by its place in that order.
 */
export class CrewTimeline {
  private size = 0;
  private words = new Int32Array(16 * WIDTH);

  constructor(private readonly hours: CompiledCalendar) {}

  /** Index of the first stretch that ends after `t`. */
  private after(t: number): number {
    const { words } = this;
    let low = 0;
    let high = this.size;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (words[middle * WIDTH + 1]! <= t) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** When stretch `i` begins. */
  fromOf(i: number): Slot {
    return this.words[i * WIDTH]! as Slot;
  }

  /** When stretch `i` ends. */
  toOf(i: number): Slot {
    return this.words[i * WIDTH + 1]! as Slot;
  }

  /** Index of the phase that takes stretch `i`. */
  ownerOf(i: number): number {
    return this.words[i * WIDTH + 4]!;
  }

  /** The first stretch that overlaps `from`–`to`; -1 when the crew is free. */
  firstIn(from: Slot, to: Slot): number {
    const i = this.after(from);
    return i < this.size && this.words[i * WIDTH]! < to ? i : -1;
  }

  /**
   * When something overlaps `from`–`to`: the last stretch before the next gap that could be long enough. Gaps that hold too little time
   * are passed over, as nothing of that length fits there.
   *
   * @param slots what is to fit: working slots of the crew, or slots of the clock
   * @returns the stretch; -1 when the crew is free
   */
  blockedBy(from: Slot, to: Slot, slots: SlotCount, working: boolean): number {
    const { words, size } = this;
    let i = this.after(from);
    if (i >= size || words[i * WIDTH]! >= to) return -1;
    const at = working ? 2 : 0;
    for (; i + 1 < size; i++) {
      const here = i * WIDTH + at;
      if (words[here + WIDTH]! - words[here + 1]! >= slots) break;
    }
    return i;
  }

  /**
   * The first stretch that overlaps `from`–`to` otherwise than wholly inside `free` time, in which the phase lets its crew go; -1 when
   * there is none.
   */
  firstOutside(from: Slot, to: Slot, free: CompiledCalendar): number {
    for (let i = this.after(from); i < this.size && this.fromOf(i) < to; i++) {
      const a = Math.max(from, this.fromOf(i));
      const b = Math.min(to, this.toOf(i));
      if (free.worked(b) - free.worked(a) < b - a) return i;
    }
    return -1;
  }

  /**
   * Takes the crew. Where facts put it on two phases at once only what is still free is entered.
   * @returns index of the phase it was already taken by; -1 for none
   */
  take(from: Slot, to: Slot, owner: number): number {
    let i = this.after(from);
    const clash = i < this.size && this.fromOf(i) < to ? this.ownerOf(i) : -1;
    let at: number = from;
    while (at < to) {
      const next = i < this.size && this.fromOf(i) < to ? this.fromOf(i) : to;
      if (next > at) this.insert(i++, at, next, owner);
      if (i >= this.size) break;
      at = Math.max(at, this.toOf(i++));
    }
    return clash;
  }

  /** Gives back what a phase has taken between two instants. */
  release(from: Slot, to: Slot, owner: number): void {
    const { words } = this;
    for (let i = this.after(from); i < this.size && this.fromOf(i) < to;) {
      if (this.ownerOf(i) !== owner) {
        i++;
        continue;
      }
      words.copyWithin(i * WIDTH, (i + 1) * WIDTH, this.size * WIDTH);
      this.size--;
    }
  }

  /** Every stretch, in order. */
  all(): (Interval & { readonly owner: number })[] {
    return Array.from({ length: this.size }, (_, i) => ({
      from: this.fromOf(i),
      to: this.toOf(i),
      owner: this.ownerOf(i),
    }));
  }

  private insert(i: number, from: number, to: number, owner: number): void {
    if ((this.size + 1) * WIDTH > this.words.length) {
      const wider = new Int32Array(this.words.length * 2);
      wider.set(this.words);
      this.words = wider;
    }
    const { words } = this;
    const at = i * WIDTH;
    if (i < this.size) words.copyWithin(at + WIDTH, at, this.size * WIDTH);
    words[at] = from;
    words[at + 1] = to;
    words[at + 2] = this.hours.worked(from);
    words[at + 3] = this.hours.worked(to);
    words[at + 4] = owner;
    this.size++;
  }
}
