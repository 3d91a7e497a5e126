import type { Point } from '../../../entry/geometry/point.js';

/**
 * A field seen as lines in two directions, its rows and columns; the cable runs along them and turns where they meet.
 * Node `row · columns + column` is where two of them meet. Neighbouring lines lie no closer than the cable may, so that
 * no path along them that visits each node once can come too near to itself.
 */
export interface Lattice {
  readonly rows: number;
  readonly columns: number;
  /** Where the nodes lie, in plan. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** 1 where the cable may lie at a node. */
  readonly free: Uint8Array;
  /** 1 where it may lie from a node to the next along its row, and along its column. */
  readonly alongRow: Uint8Array;
  readonly alongColumn: Uint8Array;
  /** Greatest distance between neighbouring rows, and between columns, in. */
  readonly rowGap: number;
  readonly columnGap: number;
  /** Least bend to look for room for at every corner, in; 0 where all lines meet squarely, so that there always is. */
  readonly bend: number;
}

/** Ways from a node to its neighbours, each a quarter turn from the one before: along the row, along the column, and back. */
export type Heading = 0 | 1 | 2 | 3;

/** The node next to another one, or -1 where the cable may not go. */
export function neighbour(lattice: Lattice, node: number, heading: Heading): number {
  const { columns, alongRow, alongColumn } = lattice;
  switch (heading) {
    case 0:
      return alongRow[node] ? node + 1 : -1;
    case 1:
      return alongColumn[node] ? node + columns : -1;
    case 2:
      return node % columns > 0 && alongRow[node - 1] ? node - 1 : -1;
    case 3:
      return node >= columns && alongColumn[node - columns] ? node - columns : -1;
  }
}

/** Where a node lies, in plan. */
export const placeOf = ({ x, y }: Lattice, node: number): Point => ({ x: x[node]!, y: y[node]! });

/** The free node nearest to a place; -1 when none is within `reach`, in. */
export function nearestNode({ x, y, free }: Lattice, p: Point, reach: number): number {
  let best = -1;
  let least = reach * reach;
  for (let node = 0; node < free.length; node++) {
    if (!free[node]) continue;
    const away = (x[node]! - p.x) ** 2 + (y[node]! - p.y) ** 2;
    if (away < least) [best, least] = [node, away];
  }
  return best;
}
