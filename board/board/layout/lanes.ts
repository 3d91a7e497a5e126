/** Something that takes a stretch of a row, in pixels. */
export interface Extent {
  readonly left: number;
  readonly right: number;
}

/**
 * Gives each extent a lane so that none overlap: in order of their left edges, each in the first lane that is free.
 *
 * @returns the lane of each extent, in the order given, and how many lanes there are.
 */
export function packLanes(extents: readonly Extent[]): {
  readonly lanes: readonly number[];
  readonly count: number;
} {
  const order = extents.map((_, index) => index).sort((a, b) => left(extents, a) - left(extents, b) || a - b);
  const lanes = new Array<number>(extents.length).fill(0);
  const ends: number[] = [];
  for (const index of order) {
    const free = ends.findIndex((end) => end <= left(extents, index));
    const lane = free === -1 ? ends.length : free;
    lanes[index] = lane;
    ends[lane] = extents[index]?.right ?? 0;
  }
  return { lanes, count: ends.length };
}

const left = (extents: readonly Extent[], index: number): number => extents[index]?.left ?? 0;
