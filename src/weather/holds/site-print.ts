import { z } from 'zod';
import { HOUR_MS } from '../../../shared/units/time.js';
import { fingerprint } from '../../platform/change/fingerprint.js';
import type { LimitSetInForce } from '../limit-sets.js';
import { protectionOf } from '../protection.js';
import { plannedWork } from './planned-work.js';
import { isLive, type WatchedSite } from './watched-sites.js';

const print = z.object({
  forecast: z.string(),
  limits: z.string(),
  work: z.string(),
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
    work: fingerprint(
      site.phases.map((phase) => [
        phase.id,
        isLive(phase),
        phase.weatherLimitKey,
        protectionOf(phase.holds),
        plannedWork(phase),
        phase.weatherHolds.map(({ id, revision, liftedAt }) => [id, revision, liftedAt]),
      ]),
    ),
    hour: Math.floor(now.getTime() / HOUR_MS),
  };
}

/** What changed against the stored print; null when nothing did. A site never looked at has a new forecast. */
export function triggerOf(stored: string | null, now: SitePrint): HoldTrigger | null {
  const before = stored === null ? null : print.parse(JSON.parse(stored));
  if (before?.forecast !== now.forecast) return 'forecast';
  if (before.limits !== now.limits) return 'limits';
  if (before.work !== now.work) return 'work';
  return before.hour === now.hour ? null : 'time';
}
