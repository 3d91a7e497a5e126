import type { Prisma } from '../../generated/prisma/client.js';
import type { Mark } from '../../../shared/entry/source.js';
import type { Transaction } from '../../platform/database/database.js';
import { isRowId } from '../../platform/row-id.js';

const FACTS = {
  placement: {
    include: { phase: { include: { area: true } }, job: { include: { site: true } } },
  },
} satisfies Prisma.CureAlarmInclude;

/** An alarm with where it stands. */
export type AlarmFacts = Prisma.CureAlarmGetPayload<{ include: typeof FACTS }>;

/** The alarm an outbox row names; null when there is none, or when it holds no longer. */
export async function standingAlarm(
  tx: Transaction,
  companyId: string,
  id: unknown,
): Promise<AlarmFacts | null> {
  if (typeof id !== 'string' || !isRowId(id)) return null;
  return tx.cureAlarm.findFirst({ where: { id, companyId, clearedAt: null }, include: FACTS });
}

/** What the alarm found, as it is kept. */
export interface StoredFinding {
  readonly measured: string;
  readonly limit: string;
  readonly mark: Mark;
  readonly source: string;
  readonly text: string;
  readonly caution: string | null;
}

/** What the alarm found. */
export const foundBy = ({ finding }: { readonly finding: unknown }): StoredFinding =>
  finding as StoredFinding;
