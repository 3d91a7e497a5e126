import { feet, squareFeet, type Feet, type SquareFeet } from '../../units/length.js';
import type { MeasuredArea } from '../measurement/area.js';
import { areaFaces } from '../quantities/area-faces.js';

/** Tread stock of an area: one piece as wide as the flight for each tread; the landing is the top tread. */
export const treadStock = (area: MeasuredArea): Feet =>
  feet(area.kind === 'flight' ? ((area.riserCount - 1) * area.width) / 12 : 0);

/** Stone of an area that is no tread stock. */
export const flatStone = (area: MeasuredArea): SquareFeet =>
  area.kind === 'flight' ? squareFeet(0) : areaFaces(area).top;
