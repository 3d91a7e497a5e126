import type { CompiledCalendar } from './compiled-calendar.js';
import type { Interval } from './model.js';
import type { Slot, SlotCount } from './slot.js';
import { FOREVER, type View } from './view.js';

/** Words a stretch takes in the timeline's array: from, to, working slots before each, owner. */
const WIDTH = 5;

/**
 * What one crew is busy with: stretches in order that never overlap, side by side in one array of whole numbers. A stretch is spoken of
 * by its place in that order.
 */
export class CrewTimeline {
  private size = 0;
  private words = new Int32Array(16 * WIDTH);

  /**
   * @param view which owners are seen; the others are taken out of the way of whatever is entered
   */
  constructor(
    private readonly hours: CompiledCalendar,
    private readonly view: View,
  ) {}

  /** Index of the first stretch that ends after `t`, seen or not. */
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

  /** Index of the first stretch from `i` on that is seen and begins before `to`; -1 for none. */
  private seenBefore(to: number, i: number): number {
    const { words, size, view } = this;
    for (; i < size && words[i * WIDTH]! < to; i++) if (view.sees(words[i * WIDTH + 4]!)) return i;
    return -1;
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
    return this.seenBefore(to, this.after(from));
  }

  /**
   * When something overlaps `from`–`to`: the last stretch before the next gap that could be long enough. Gaps that hold too little time
   * are passed over, as nothing of that length fits there.
   *
   * @param slots what is to fit: working slots of the crew, or slots of the clock
   * @returns the stretch; -1 when the crew is free
   */
  blockedBy(from: Slot, to: Slot, slots: SlotCount, working: boolean): number {
    const { words, size, view } = this;
    let last = this.seenBefore(to, this.after(from));
    if (last < 0) return -1;
    const at = working ? 2 : 0;
    for (let i = last + 1; i < size; i++) {
      if (words[i * WIDTH + at]! - words[last * WIDTH + at + 1]! >= slots) break;
      if (view.sees(words[i * WIDTH + 4]!)) last = i;
    }
    return last;
  }

  /**
   * The first stretch that overlaps `from`–`to` otherwise than wholly inside `free` time, in which the phase lets its crew go; -1 when
   * there is none.
   */
  firstOutside(from: Slot, to: Slot, free: CompiledCalendar): number {
    for (let i = this.firstIn(from, to); i >= 0; i = this.seenBefore(to, i + 1)) {
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
    if (this.view.until < FOREVER) this.oust(from, to);
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
    this.drop(from, to, (one) => one === owner);
  }

  /** Takes what is not seen out of the way. */
  private oust(from: Slot, to: Slot): void {
    this.drop(from, to, (owner) => {
      if (this.view.sees(owner)) return false;
      this.view.ousted.add(owner);
      return true;
    });
  }

  private drop(from: Slot, to: Slot, isTo: (owner: number) => boolean): void {
    const { words } = this;
    for (let i = this.after(from); i < this.size && this.fromOf(i) < to;) {
      if (!isTo(this.ownerOf(i))) {
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
