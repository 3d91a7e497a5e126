import type { Feet, Inches, SquareFeet } from '../../units/length.js';

/** What an area is. */
export type AreaKind = 'landing' | 'flight' | 'walk';

interface AreaCommon {
  /** Short key, stable: `landing`, `steps`, `walk-1`. */
  readonly key: string;
  readonly name: string;
  readonly heated: boolean;
  /** What is walked on, from the outline as drawn; left out where no plan was drawn: then it is a rectangle. */
  readonly drawnTop?: SquareFeet;
}

/** A level platform at the door. Its back stands against the house. */
export interface LandingArea extends AreaCommon {
  readonly kind: 'landing';
  /** Out from the wall. */
  readonly length: Inches;
  /** Along the wall. */
  readonly width: Inches;
  /** Finished top above the finished walk. */
  readonly height: Inches;
}

/** A flight of steps. `riserCount` counts every rise, the last one onto the landing; treads are one fewer. */
export interface FlightArea extends AreaCommon {
  readonly kind: 'flight';
  readonly riserCount: number;
  readonly riser: Inches;
  readonly tread: Inches;
  readonly width: Inches;
}

/** A walk on grade. */
export interface WalkArea extends AreaCommon {
  readonly kind: 'walk';
  readonly length: Feet;
  readonly width: Inches;
}

/** A surface of the job as measured. */
export type MeasuredArea = LandingArea | FlightArea | WalkArea;
