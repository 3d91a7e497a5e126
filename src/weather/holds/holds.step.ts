import type { Change } from '../../platform/change/change.js';
import { limitSetsInForce } from '../limit-sets.js';
import { coreForecast } from '../stored-forecast.js';
import { writeMoves } from './hold-writer.js';
import { basisOf, settlePhase } from './settle-phase.js';
import { isSamePrint, sitePrint, storedPrint, triggerOf } from './site-print.js';
import { isLive, watchedSites } from './watched-sites.js';

/**
 * The step that opens, moves and lifts the holds of the forecast, before the plan is made anew: they follow from the
 * forecast, the limits, the protection, the plan and the time. A site where none of these changed within the hour is
 * not computed, nor is its forecast read.
 */
export async function holdsStep(change: Change): Promise<void> {
  const { tx, ctx, now } = change;
  const sites = await watchedSites(change);
  if (sites.length === 0) return;
  const rows = await tx.weatherLimitSet.findMany({ where: { companyId: ctx.companyId } });
  const limits = new Map(limitSetsInForce(rows).map((set) => [set.key, set]));
  for (const site of sites) {
    const print = sitePrint(site, limits, now);
    const before = storedPrint(site.weatherPrint);
    if (isSamePrint(before, print)) continue;
    const row = await tx.forecast.findUniqueOrThrow({ where: { id: site.forecastId } });
    const forecast = coreForecast(row);
    const arrives = before?.forecast !== print.forecast && row.receivedAt.getTime() === now.getTime();
    for (const phase of site.phases) {
      const set = limits.get(phase.weatherLimitKey ?? '');
      await writeMoves(change, phase, settlePhase(phase, set, forecast, now), {
        trigger: triggerOf(before, print, { phaseId: phase.id, arrives }),
        issuedAt: row.issuedAt,
        zone: site.zone,
        live: isLive(phase),
        basis: basisOf(phase, set, site.forecastId),
      });
    }
    await tx.site.update({ where: { id: site.id }, data: { weatherPrint: JSON.stringify(print) } });
  }
}
