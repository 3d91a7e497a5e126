/** A place in space, in: the plan's x and y, and the height over the cable on the landing. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A straight stretch of cable. */
export interface Straight {
  readonly kind: 'straight';
  readonly from: Place;
  readonly to: Place;
}

/** A bend of constant radius: from `from`, leaving along `into`, turning towards the unit direction `towards`. */
export interface Arc {
  readonly kind: 'bend';
  readonly from: Place;
  readonly to: Place;
  readonly centre: Place;
  readonly radius: number;
  /** How far it turns, rad. */
  readonly angle: number;
  readonly into: Place;
  readonly towards: Place;
}

/** A piece of the cable's path; pieces join end to end. */
export type Piece = Straight | Arc;
