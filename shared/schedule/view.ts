/** Beyond any place in an order, and beyond any horizon. */
export const FOREVER = 2 ** 30;

/**
 * Which phases are seen to have their crew: all that are placed, or, when a pass is gone over again, only those that come before the one that
 * is being placed. So a phase can be placed anew while those after it keep their places.
 */
export class View {
  /** Place of each phase in the order of settling; -1 for one whose crew was set aside from the beginning. */
  readonly since: Int32Array;
  /** Nothing from this place on is seen. */
  until = FOREVER;
  /** Those that were not seen and have lost their crew to one that is placed, if only for a try: they are to be placed anew. */
  readonly ousted = new Set<number>();

  constructor(count: number) {
    this.since = new Int32Array(count);
  }

  sees(index: number): boolean {
    return this.since[index]! < this.until;
  }
}
