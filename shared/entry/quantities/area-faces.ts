import { rectangle, squareFeet, toFeet, type SquareFeet } from '../../units/length.js';
import type { FlightArea, LandingArea, MeasuredArea } from '../measurement/area.js';

/** The faces of an area above finished grade. */
export interface AreaFaces {
  /** What is walked on. */
  readonly top: SquareFeet;
  /** Risers and open sides: what veneer covers. */
  readonly upright: SquareFeet;
}

/** Tops and uprights of an area, the top as drawn where it was. Of a landing three sides are open; a flight's top tread is the landing. */
export function areaFaces(area: MeasuredArea): AreaFaces {
  switch (area.kind) {
    case 'walk':
      return { top: area.drawnTop ?? rectangle(area.length, toFeet(area.width)), upright: squareFeet(0) };
    case 'landing':
      return landingFaces(area);
    case 'flight':
      return flightFaces(area);
  }
}

function landingFaces({ length, width, height, drawnTop }: LandingArea): AreaFaces {
  return {
    top: drawnTop ?? rectangle(toFeet(length), toFeet(width)),
    upright: squareFeet(((2 * length + width) * height) / 144),
  };
}

/** Each side of a flight of n risers is a stair of 1 + 2 + … + (n − 1) rectangles of riser by tread. */
function flightFaces({ riserCount, riser, tread, width }: FlightArea): AreaFaces {
  const treads = riserCount - 1;
  const side = ((treads * riserCount) / 2) * riser * tread;
  return {
    top: squareFeet((treads * tread * width) / 144),
    upright: squareFeet((riserCount * riser * width + 2 * side) / 144),
  };
}
