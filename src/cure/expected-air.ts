import type { ForecastHour } from '../../shared/weather/forecast.js';
import { type Fahrenheit, fahrenheit } from '../../shared/units/temperature.js';
import type { Transaction } from '../platform/database/database.js';

/** How far ahead the forecast's temperatures are averaged. */
const AHEAD_MS = 72 * 60 * 60 * 1000;

/** Air that is assumed where neither a reading nor a forecast tells: the border of cold weather. Common practice. */
const NOTHING_KNOWN = fahrenheit(40);

/** Mean temperature of the next three days by the newest forecast of each site; cautious where there is none. */
export async function expectedAir(
  tx: Transaction,
  companyId: string,
  siteIds: readonly string[],
  now: Date,
): Promise<(siteId: string) => Fahrenheit> {
  const forecasts = await tx.forecast.findMany({
    where: { companyId, siteId: { in: [...siteIds] } },
    distinct: ['siteId'],
    orderBy: [{ siteId: 'asc' }, { issuedAt: 'desc' }, { id: 'desc' }],
  });
  const from = now.getTime();
  const means = new Map(
    forecasts.map(({ siteId, hours }) => {
      const ahead = (hours as unknown as ForecastHour[]).filter(
        ({ at }) => at >= from && at < from + AHEAD_MS,
      );
      const known = ahead.flatMap(({ temperature }) => temperature ?? []);
      const sum = known.reduce((total, value) => total + value, 0);
      return [siteId, known.length > 0 ? fahrenheit(sum / known.length) : NOTHING_KNOWN] as const;
    }),
  );
  return (siteId) => means.get(siteId) ?? NOTHING_KNOWN;
}
