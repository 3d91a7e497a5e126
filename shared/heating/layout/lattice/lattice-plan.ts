import type { Lattice } from './lattice.js';
import type { LineFamily } from './lines.js';

/** How a field can be seen as lines: which directions, which lines must be there, and the lattice that chosen lines make. */
export interface LatticePlan {
  readonly rows: LineFamily;
  readonly columns: LineFamily;
  readonly build: (rows: readonly number[], columns: readonly number[]) => Lattice;
}
