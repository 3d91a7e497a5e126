import type { BoardData } from './rows.js';

export type Visit = BoardData['inspections'][number];

/** When a visit was, is booked or is planned, in milliseconds; null when nobody knows. */
export function visitTime(visit: Visit): number | null {
  const at = visit.visitFrom ?? visit.plannedVisit?.startAt;
  return at ? Date.parse(at) : null;
}
