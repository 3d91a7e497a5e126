import type { Outline } from './outline.js';
import type { Point } from './point.js';

/** What the cable keeps away from: a post or a drain. A round one has a radius, any other an outline. */
export type KeepOut = {
  readonly name: string;
  /** Between the thing's edge and the cable's middle, in. */
  readonly clearance: number;
} & (
  | { readonly kind: 'round'; readonly centre: Point; readonly radius: number }
  | { readonly kind: 'outline'; readonly outline: Outline }
);

interface SurfaceCommon {
  /** Key of the area of the job that this is. */
  readonly key: string;
  readonly name: string;
  /** Kept free along every side that has no setback of its own, in. */
  readonly setback: number;
  readonly keepOuts: readonly KeepOut[];
}

/** A landing as measured: any outline without crossings. */
export interface LandingSurface extends SurfaceCommon {
  readonly kind: 'landing';
  readonly outline: Outline;
  /** Setbacks by side where they differ: side i runs from corner i to the next. */
  readonly sideSetbacks: Readonly<Record<number, number>>;
  /** Movement joints, each straight across from one side to another. */
  readonly joints: readonly (readonly [Point, Point])[];
}

/** A flight of steps that goes down from the surface before it. */
export interface FlightSurface extends SurfaceCommon {
  readonly kind: 'flight';
  /** Both ends of the line of the uppermost riser's face. */
  readonly top: readonly [Point, Point];
  readonly riserCount: number;
  readonly riser: number;
  /** From riser face to riser face, in. */
  readonly tread: number;
  /** How far the stone stands out over the riser below it, in. */
  readonly nosing: number;
  /** Kept free behind the front of each tread, in. */
  readonly frontSetback: number;
}

/** A walk: a line through its middle with a width at each point, so that bends and flares are both said. */
export interface WalkSurface extends SurfaceCommon {
  readonly kind: 'walk';
  readonly line: readonly { readonly at: Point; readonly width: number }[];
  /** Movement joints straight across, by their distance along the line, in. */
  readonly joints: readonly number[];
}

/** A surface as measured on site. */
export type Surface = LandingSurface | FlightSurface | WalkSurface;

/** The entry as measured: the wall, where leads go through it, and the surfaces from the door outwards, in turn. */
export interface SitePlan {
  readonly wall: readonly [Point, Point];
  /** Middle of the cold lead's sleeve, on the wall. */
  readonly penetration: Point;
  readonly surfaces: readonly Surface[];
}
