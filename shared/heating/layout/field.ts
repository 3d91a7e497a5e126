import type { KeepOut } from '../../entry/geometry/site-plan.js';
import type { KeptSide } from '../../entry/geometry/split-at-joint.js';

/** A piece of surface that the cable fills before it goes on: a landing, a tread, a leg of a walk, a part between joints. */
export interface Field {
  /** Unique: the area's key, with a number where the area has several. */
  readonly key: string;
  readonly areaKey: string;
  readonly kind: 'landing' | 'tread' | 'walk';
  /** In turn, so that the area lies on the hand towards which x turns into y. */
  readonly sides: readonly KeptSide[];
  readonly keepOuts: readonly KeepOut[];
  /** Height of the cable under the landing's, in; 0 or less. */
  readonly level: number;
}

/** How the cable gets from one field to the next. */
export interface Passage {
  /** Side of the field it leaves and of the field it comes into, by number. */
  readonly fromSide: number;
  readonly toSide: number;
  /** Leg of the chamfer that is cut where it steps down, in; 0 on the level. */
  readonly chamfer: number;
}

/** Fields in turn, and a passage between each and the next. */
export interface FieldChain {
  readonly fields: readonly Field[];
  readonly passages: readonly Passage[];
}
