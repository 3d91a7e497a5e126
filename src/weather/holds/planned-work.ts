import { epochMs, HOUR_MS } from '../../../shared/units/time.js';
import type { Stretch } from '../../../shared/weather/stretch.js';
import type { WatchedPhase } from './watched-sites.js';

/** How a promise goes on after its first shift only the plan can tell. */
const SHIFT_MS = 8 * HOUR_MS;

type Dated = Pick<WatchedPhase, 'state' | 'pinnedStart' | 'durationMinutes' | 'planned' | 'commitments'>;

/**
 * When people expect the work: the stretches of the plan; and of work that waits, the first shift of what was pinned or
 * promised, which the plan may have left because of the weather while the crew still counts on it.
 */
export function plannedWork({ state, pinnedStart, durationMinutes, planned, commitments }: Dated): Stretch[] {
  const segments = (planned?.segments ?? []) as [number, number][];
  const plan = segments.map(([from, to]) => ({ from: epochMs(from), to: epochMs(to) }));
  if (state !== 'waiting') return plan;
  const longest = Math.min(SHIFT_MS, durationMinutes * 60_000);
  const pinned = pinnedStart ? [{ startAt: pinnedStart, finishAt: null }] : [];
  const promised = [...pinned, ...commitments].map(({ startAt, finishAt }) => ({
    from: epochMs(startAt.getTime()),
    to: epochMs(Math.min(startAt.getTime() + longest, finishAt?.getTime() ?? Infinity)),
  }));
  return [...plan, ...promised.filter(({ from, to }) => to > from)];
}
