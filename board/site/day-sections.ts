import type { TodayQuery } from '../api/documents.js';
import { addDays, dateAt } from '../time/zone-days.js';

export type SitePhase = TodayQuery['today'][number];

/** A heading of the site sheet with its phases. */
export interface DaySection {
  readonly title: string;
  readonly phases: readonly SitePhase[];
}

/** Started phases first, then those planned to start today, then tomorrow's; each by planned start. */
export function daySections(phases: readonly SitePhase[], now: number, zone: string): DaySection[] {
  const tomorrow = addDays(dateAt(now, zone), 1);
  const ordered = [...phases]
    .filter(({ state }) => state !== 'done' && state !== 'dropped')
    .sort((a, b) => startOf(a) - startOf(b));
  const waiting = ordered.filter(({ state }) => state === 'waiting');
  const isLater = (phase: SitePhase) => dateAt(startOf(phase), zone) >= tomorrow;
  return [
    { title: 'Started', phases: ordered.filter(({ state }) => state === 'started') },
    { title: 'Today', phases: waiting.filter((phase) => !isLater(phase)) },
    { title: 'Tomorrow', phases: waiting.filter(isLater) },
  ];
}

function startOf(phase: SitePhase): number {
  return Date.parse(phase.actualStart ?? phase.planned?.startAt ?? '1970-01-01T00:00:00Z');
}
