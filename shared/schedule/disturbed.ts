/** Two to this power slots are one bit: a working day. */
const BIT = 5;
/** Two to this power bits are one word. */
const WORD = 5;

/** Which stretches of time of crews or pools are not as they were, in bits of eight hours: rather too much than too little. */
export class Disturbed {
  private readonly width: number;
  private readonly words: Int32Array;
  /** The same for all rows together: most questions end there. */
  private readonly any: Int32Array;

  /**
   * @param rows crews, or pools
   * @param horizon slots; whatever lies before or beyond counts as its first and last bit
   */
  constructor(rows: number, horizon: number) {
    this.width = (horizon >> (BIT + WORD)) + 1;
    this.words = new Int32Array(rows * this.width);
    this.any = new Int32Array(this.width);
  }

  /** Notes a stretch; one of no length counts as a slot. */
  add(row: number, from: number, to: number): void {
    const last = this.bitOf(Math.max(from, to - 1));
    for (let bit = this.bitOf(from); bit <= last; bit++) {
      const mask = 1 << (bit & 31);
      this.words[row * this.width + (bit >> WORD)]! |= mask;
      this.any[bit >> WORD]! |= mask;
    }
  }

  /** Whether anything between two instants is disturbed in any row. */
  touchesAny(from: number, to: number): boolean {
    return from < to && this.hits(this.any, 0, this.bitOf(from), this.bitOf(to - 1));
  }

  /** Whether anything between two instants is disturbed. */
  touches(row: number, from: number, to: number): boolean {
    return from < to && this.hits(this.words, row * this.width, this.bitOf(from), this.bitOf(to - 1));
  }

  private hits(words: Int32Array, at: number, first: number, last: number): boolean {
    for (let word = first >> WORD; word <= last >> WORD; word++) {
      let found = words[at + word]!;
      if (word === first >> WORD) found &= -1 << (first & 31);
      if (word === last >> WORD) found &= -1 >>> (31 - (last & 31));
      if (found !== 0) return true;
    }
    return false;
  }

  private bitOf(t: number): number {
    const bit = t >> BIT;
    const last = (this.width << WORD) - 1;
    return bit < 0 ? 0 : bit > last ? last : bit;
  }
}
