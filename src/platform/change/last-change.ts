import type { Change } from './change.js';

/** Who did one of these things to a row last, and when; null where the journal does not know. */
export async function lastChange(
  change: Change,
  subjectId: string,
  actions: readonly string[],
): Promise<{ readonly changedBy: string | null; readonly changedAt: Date | null }> {
  const { companyId } = change.ctx;
  const entry = await change.tx.journalEntry.findFirst({
    where: { companyId, subjectId, action: { in: [...actions] } },
    orderBy: { id: 'desc' },
  });
  const person = entry?.personId
    ? await change.tx.person.findFirst({ where: { companyId, id: entry.personId } })
    : null;
  return { changedBy: person?.name ?? null, changedAt: entry?.at ?? null };
}
