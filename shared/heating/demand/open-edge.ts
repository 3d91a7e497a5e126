import type { MeasuredArea } from '../../entry/measurement/area.js';
import { feet, type Feet } from '../../units/length.js';

/**
 * Edge of an area that is open to the air. A landing's back stands against the house; a flight is open at both sides, its
 * front is the walk's end; of a walk the two sides.
 */
export function openEdge(area: MeasuredArea): Feet {
  switch (area.kind) {
    case 'landing':
      return feet((2 * area.length + area.width) / 12);
    case 'flight':
      return feet((2 * (area.riserCount - 1) * area.tread) / 12);
    case 'walk':
      return feet(2 * area.length);
  }
}
