import type { TodayQuery } from '../api/documents.js';
import { addDays, dateAt } from '../time/zone-days.js';

export type SitePhase = TodayQuery['today'][number];

/** A heading of the site sheet with its phases. */
export interface DaySection<P extends SitePhase> {
  readonly title: string;
  readonly phases: readonly P[];
}

/** Started phases first, then those planned to start today, then tomorrow's, then what was just done; each by start. */
export function daySections<P extends SitePhase>(
  phases: readonly P[],
  now: number,
  zone: string,
): DaySection<P>[] {
  const tomorrow = addDays(dateAt(now, zone), 1);
  const ordered = [...phases].sort((a, b) => startOf(a) - startOf(b));
  const done = ordered.filter(({ state }) => state === 'done');
  const waiting = ordered.filter(({ state }) => state === 'waiting');
  const isLater = (phase: SitePhase) => dateAt(startOf(phase), zone) >= tomorrow;
  return [
    { title: 'Started', phases: ordered.filter(({ state }) => state === 'started') },
    { title: 'Today', phases: waiting.filter((phase) => !isLater(phase)) },
    { title: 'Tomorrow', phases: waiting.filter(isLater) },
    ...(done.length > 0 ? [{ title: 'Done', phases: done }] : []),
  ];
}

function startOf(phase: SitePhase): number {
  return Date.parse(phase.actualStart ?? phase.planned?.startAt ?? '1970-01-01T00:00:00Z');
}
