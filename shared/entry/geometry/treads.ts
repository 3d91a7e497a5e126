import type { Outline } from './outline.js';
import { add, direction, quarterTurn, scale, type Point } from './point.js';
import type { FlightSurface } from './site-plan.js';

/** The way down a flight, of length 1: off the line of the top riser, away from where one comes from. */
export function wayDown({ top: [a, b] }: FlightSurface, from: Point): Point {
  const across = quarterTurn(direction(a, b));
  const toSource = (from.x - a.x) * across.x + (from.y - a.y) * across.y;
  return toSource > 0 ? scale(across, -1) : across;
}

/** The treads of a flight from the top down; corners in turn, the first two on the riser above. */
export function treads(flight: FlightSurface, from: Point): Outline[] {
  const down = wayDown(flight, from);
  const [a, b] = flight.top;
  return Array.from({ length: flight.riserCount - 1 }, (_, i) => {
    const back = scale(down, i * flight.tread);
    const front = scale(down, (i + 1) * flight.tread);
    return [add(a, back), add(b, back), add(b, front), add(a, front)];
  });
}
