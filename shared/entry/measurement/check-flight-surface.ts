import { distance } from '../geometry/point.js';
import type { FlightSurface } from '../geometry/site-plan.js';
import type { Fault } from '../read/fault.js';
import type { FlightArea } from './area.js';
import { lengthFault } from './check-landing-surface.js';

/** Faults of a flight as drawn: the line of its top riser is as long as the flight is wide. */
export const checkFlightSurface = ({ top }: FlightSurface, area: FlightArea): Fault[] =>
  lengthFault('topInches', 'along the top riser', distance(...top), area.width, 'widthInches');
