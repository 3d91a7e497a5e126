import type { Job, Phase, WeatherHold } from '../../generated/prisma/client.js';
import type { Transaction } from '../../platform/database/database.js';
import { coreForecast, limitSetsInForce, newestForecastIds } from '../../weather/weather.face.js';
import type { PhaseEquipment } from './gather-equipment.js';
import type { WeatherFacts } from './phase-facts.js';

/** Weather of many phases, looked up by phase and job. */
export interface GatheredWeather {
  holdsOf(phase: Phase, job: Job): WeatherHold[];
  factsOf(phase: Phase, job: Job): WeatherFacts | null;
}

/** Reads the holds and the newest forecast of the sites of phases, and the company's limits. */
export async function gatherWeather(
  tx: Transaction,
  companyId: string,
  phases: readonly (Phase & { readonly job: Job })[],
  equipment: ReadonlyMap<string, PhaseEquipment>,
): Promise<GatheredWeather> {
  const siteIds = [...new Set(phases.map(({ job }) => job.siteId))];
  const keys = [...new Set(phases.flatMap(({ weatherLimitKey }) => weatherLimitKey ?? []))];
  const holds = await tx.weatherHold.findMany({
    where: {
      companyId,
      siteId: { in: siteIds },
      OR: [{ liftedAt: null }, { cause: 'forecast', liftedById: { not: null } }],
    },
    orderBy: [{ startsAt: 'asc' }, { id: 'asc' }],
  });
  const forecasts = await tx.forecast.findMany({
    where: { companyId, id: { in: await newestForecastIds(tx, companyId, siteIds) } },
  });
  const own = await tx.weatherLimitSet.findMany({ where: { companyId, key: { in: keys } } });
  const limits = new Map(limitSetsInForce(own).map((set) => [set.key, set.limits]));
  return {
    holdsOf: (phase, { siteId }) =>
      holds.filter((hold) => hold.siteId === siteId && (hold.phaseId === null || hold.phaseId === phase.id)),
    factsOf: (phase, { siteId }) => {
      const forecast = forecasts.find((row) => row.siteId === siteId);
      const set = phase.weatherLimitKey === null ? undefined : limits.get(phase.weatherLimitKey);
      if (!forecast || !set) return null;
      const protection = equipment.get(phase.id)?.kinds ?? [];
      return { limits: set, forecast: coreForecast(forecast), protection };
    },
  };
}
