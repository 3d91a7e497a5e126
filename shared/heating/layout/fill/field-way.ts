import type { Point } from '../../../entry/geometry/point.js';
import type { LatticePlan } from '../lattice/lattice-plan.js';
import type { Runs } from './hang-loops.js';

/** Where the cable comes into a field or leaves it: a place of the ring, and how far from it a node may be, in. */
export interface FieldEnd {
  readonly at: Point;
  readonly reach: number;
  /** The place it comes from or goes to, straight across: the sleeve, or the line shared with the next field. */
  readonly beyond: Point | null;
  /** Whether the heated cable goes on there. */
  readonly goesOn: boolean;
}

/** How a field is filled: from where to where, on which hand its edge lies on the way, and along which lines the runs go. */
export interface FieldWay {
  readonly plan: LatticePlan;
  readonly from: FieldEnd;
  readonly to: FieldEnd;
  readonly hand: 1 | -1;
  readonly runs: Runs;
}
