import { feet, squareFeet, type Feet, type SquareFeet } from '../../units/length.js';
import type { MeasuredArea } from '../measurement/area.js';
import { areaFaces } from '../quantities/area-faces.js';

/** What a foot of corner pieces covers, both legs together, ft². Common practice, no source. */
const CORNER_COVERS = 0.75;

/** Veneer of an area as it is bought: corner pieces by the foot, flats by the square foot. */
export interface VeneerParts {
  readonly corners: Feet;
  readonly flats: SquareFeet;
}

/** A landing has two outer corners as high as itself; a flight has two at each riser. */
export function veneerParts(area: MeasuredArea): VeneerParts {
  const corners = feet(outerCorners(area) / 12);
  return { corners, flats: squareFeet(Math.max(0, areaFaces(area).upright - corners * CORNER_COVERS)) };
}

function outerCorners(area: MeasuredArea): number {
  switch (area.kind) {
    case 'walk':
      return 0;
    case 'landing':
      return 2 * area.height;
    case 'flight':
      return 2 * area.riserCount * area.riser;
  }
}
