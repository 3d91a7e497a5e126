import type { CableReading, ReadingStage } from '../../generated/prisma/client.js';
import type { Transaction } from '../../platform/database/database.js';

const ORDER: readonly ReadingStage[] = ['received', 'laid', 'covered', 'beforeHookup'];

/** The latest reading of each of these sets that is outside its limits; a set in order is left out. */
export async function failingReadings(
  tx: Transaction,
  companyId: string,
  heatingSetIds: readonly string[],
): Promise<Map<string, CableReading>> {
  const latest = await tx.cableReading.findMany({
    where: { companyId, heatingSetId: { in: [...heatingSetIds] } },
    distinct: ['heatingSetId'],
    orderBy: [{ heatingSetId: 'asc' }, { at: 'desc' }, { accepted: 'asc' }, { id: 'desc' }],
  });
  return new Map(latest.filter(({ accepted }) => !accepted).map((row) => [row.heatingSetId, row]));
}

/** Whether a failing reading of one stage forbids work whose own reading belongs to another: what comes after it. */
export function forbidsStage(failing: ReadingStage, stage: ReadingStage): boolean {
  return ORDER.indexOf(stage) > ORDER.indexOf(failing);
}
