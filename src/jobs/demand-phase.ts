import type { Job, Phase } from '../generated/prisma/client.js';
import type { Change } from '../platform/change/change.js';
import { companyRow } from '../platform/database/company-row.js';
import { demandFound } from '../platform/outcomes/demand.js';

/** The phase with its job inside a change. @throws Refused with NotFound when the company has none of that id. */
export async function demandPhase(change: Change, id: string): Promise<Phase & { job: Job }> {
  const row = await change.tx.phase.findFirst({ where: companyRow(change, id), include: { job: true } });
  return demandFound(row, 'phase');
}
