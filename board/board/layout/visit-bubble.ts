import type { Axis } from './axis.js';
import { type Visit, visitTime } from './visit-time.js';

/** Where the mark of a visit stands, in pixels: the moment itself, and its bubble beside the figures of the day. */
export interface VisitPlace {
  readonly at: number;
  readonly bubble: number;
}

/** Room that the figures of the weather take at the left of a day. */
const figures = (dayWidth: number): number => (dayWidth >= 64 ? 56 : dayWidth >= 30 ? 32 : 8);

/** The place of a visit's mark, or null when it has no time within the days shown. */
export function visitPlace(visit: Visit, axis: Axis): VisitPlace | null {
  const moment = visitTime(visit);
  if (moment === null || moment < axis.start || moment >= axis.end) return null;
  const at = axis.x(moment);
  const dayLeft = Math.floor(at / axis.dayWidth) * axis.dayWidth;
  return { at, bubble: Math.max(at, dayLeft + figures(axis.dayWidth)) };
}
