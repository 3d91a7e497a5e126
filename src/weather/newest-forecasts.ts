import type { Transaction } from '../platform/database/database.js';

/** Ids of the newest forecast of each site: last issued, and of equally old ones the one received last. */
export async function newestForecastIds(
  database: Pick<Transaction, '$queryRaw'>,
  companyId: string,
  siteIds: readonly string[],
): Promise<string[]> {
  if (siteIds.length === 0) return [];
  const rows = await database.$queryRaw<{ id: string }[]>`
    select distinct on ("siteId") id from "Forecast"
    where "companyId" = ${companyId}::uuid and "siteId" = any(${[...siteIds]}::uuid[])
      and "setAsideAt" is null
    order by "siteId", "issuedAt" desc, "receivedAt" desc, id desc`;
  return rows.map(({ id }) => id);
}
