import { cureAlarms } from '../../../shared/cure/alarms/cure-alarms.js';
import { predictCure } from '../../../shared/cure/prediction/predict-cure.js';
import { epochMs } from '../../../shared/units/time.js';
import type { Change } from '../../platform/change/change.js';
import { fingerprint } from '../../platform/change/fingerprint.js';
import { type FoundAlarm, syncAlarms } from '../alarms/sync-alarms.js';
import { cureRequestOf } from '../outlook/cure-request.js';
import { type SiteAir, siteAir } from '../outlook/site-air.js';
import { isBare } from '../protection/protection-spec.js';
import { protectionSpecOf } from '../stored-placement.js';
import { type WatchedRow, watchedPlacements } from './watched-placements.js';

const HOUR_MS = 3_600_000;

/**
 * The step that watches what cures, before the plan is made anew: each placement's predicted date and its alarms follow
 * from its readings, its protection and the forecast. Where none of these changed within the hour, nothing is computed.
 */
export async function watchStep(change: Change): Promise<void> {
  const rows = await watchedPlacements(change);
  if (rows.length === 0) return;
  const siteIds = [...new Set(rows.map(({ job }) => job.siteId))];
  const airOf = await siteAir(change.tx, change.ctx.companyId, siteIds, change.now);
  for (const row of rows) await watch(change, row, airOf(row.job.siteId));
}

async function watch(change: Change, row: WatchedRow, air: SiteAir): Promise<void> {
  const print = printOf(change, row, air);
  if (row.watchedPrint === print) return;
  const request = cureRequestOf(row, change.now, air);
  const prediction = predictCure(request);
  const { release } = prediction;
  await change.tx.placement.update({
    where: { id: row.id },
    data: {
      predictedReleaseAt: release && new Date(release.at),
      watchedPrint: print,
    },
  });
  const found = cureAlarms({ request, prediction, now: epochMs(change.now.getTime()) });
  await syncAlarms(
    change,
    row,
    found.filter((alarm) => stillMatters(alarm, row)),
  );
}

/** What the prediction rests on. The hour belongs to it: readings fall due and the forecast is worn off by time alone. */
function printOf({ now }: Change, row: WatchedRow, { forecastId }: SiteAir): string {
  const { id, readings, placedAt, placedTempF, sectionInches, mixture, requiredPsi, decided, job } = row;
  return fingerprint({
    id,
    placed: [placedAt, placedTempF, sectionInches, requiredPsi, mixture],
    protection: [protectionSpecOf(row), row.protectionOffAt],
    readings: [readings.length, readings.at(-1)?.at, readings.at(-1)?.concreteF],
    forecastId,
    hour: Math.floor(now.getTime() / HOUR_MS),
    decided,
    job: job.state,
  });
}

/** Once the strength is decided about, only the protection is left to mind; after the job, nothing is. */
function stillMatters({ kind }: FoundAlarm, row: WatchedRow): boolean {
  if (row.job.state !== 'entered' && row.job.state !== 'running') return false;
  const covered = row.protectionOffAt === null && !isBare(protectionSpecOf(row));
  if (kind === 'protection-may-come-off') return covered;
  return !row.decided || kind === 'froze-early';
}
