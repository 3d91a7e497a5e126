import { z } from 'zod';
import { HOUR_MS } from '../../../shared/units/time.js';
import { fingerprint } from '../../platform/change/fingerprint.js';
import type { LimitSetInForce } from '../limit-sets.js';
import { protectionOf } from '../protection.js';
import { plannedWork } from './planned-work.js';
import { isLive, type WatchedPhase, type WatchedSite } from './watched-sites.js';

const print = z.object({
  forecast: z.string(),
  limits: z.string(),
  /** By phase id, what its own holds rest on. */
  work: z.record(z.string(), z.string()),
  hour: z.number(),
});

/** What the holds of a site rest on. The hour belongs to it: work comes near by time alone. */
export type SitePrint = z.infer<typeof print>;

/** What changed since a site was last looked at. */
export type HoldTrigger = 'forecast' | 'limits' | 'work' | 'time';

/** What the holds of a site rest on now. */
export function sitePrint(
  site: WatchedSite,
  limits: ReadonlyMap<string, LimitSetInForce>,
  now: Date,
): SitePrint {
  const keys = [...new Set(site.phases.flatMap(({ weatherLimitKey }) => weatherLimitKey ?? []))].sort();
  return {
    forecast: site.forecastId,
    limits: fingerprint(keys.map((key) => [key, limits.get(key)?.revision ?? null])),
    work: Object.fromEntries(site.phases.map((phase) => [phase.id, phasePrint(phase)])),
    hour: Math.floor(now.getTime() / HOUR_MS),
  };
}

const phasePrint = (phase: WatchedPhase): string =>
  fingerprint([
    isLive(phase),
    phase.weatherLimitKey,
    protectionOf(phase.holds),
    plannedWork(phase),
    phase.weatherHolds.map(({ id, revision, liftedAt }) => [id, revision, liftedAt]),
  ]).slice(0, 16);

/** The print as it was stored; null when the site was never looked at. */
export const storedPrint = (stored: string | null): SitePrint | null =>
  stored === null ? null : print.parse(JSON.parse(stored));

/** Whether anything that the holds of a site rest on has changed. */
export const isSamePrint = (before: SitePrint | null, now: SitePrint): boolean =>
  before !== null && fingerprint(before) === fingerprint(now);

/**
 * What changed for a phase, of a forecast that arrives with this very change or of an older one. Work that was not in
 * sight before comes near by time, unless it was looked at within the hour.
 */
export function triggerOf(
  before: SitePrint | null,
  now: SitePrint,
  { phaseId, arrives }: { readonly phaseId: string; readonly arrives: boolean },
): HoldTrigger {
  if (arrives) return 'forecast';
  const known = before?.work[phaseId];
  if (known === undefined) return before?.hour === now.hour ? 'work' : 'time';
  if (before?.limits !== now.limits) return 'limits';
  return known === now.work[phaseId] ? 'time' : 'work';
}
