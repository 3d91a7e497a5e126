import type { BoardPhaseFragment } from '../../api/documents.js';

/** From when to when a phase is drawn. */
export interface BarTimes {
  readonly from: number;
  readonly to: number;
}

/**
 * What happened where it happened, else what is planned, else what was committed; null when a phase has no time at all.
 * A started phase reaches at least to now.
 */
export function barTimes(phase: BoardPhaseFragment, now: number): BarTimes | null {
  const { planned, commitment } = phase;
  const from = phase.actualStart ?? planned?.startAt ?? commitment?.startAt;
  if (!from) return null;
  const start = Date.parse(from);
  if (phase.actualFinish) return { from: start, to: Math.max(start, Date.parse(phase.actualFinish)) };
  const to = planned?.finishAt ?? commitment?.finishAt ?? from;
  const finish = Date.parse(to);
  return { from: start, to: Math.max(start, phase.state === 'started' ? Math.max(finish, now) : finish) };
}
