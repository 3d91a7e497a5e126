import type { Transaction } from '../platform/database/database.js';

/** Number of the company's newest journal entry, "0" before the first. */
export async function newestChange(
  database: Pick<Transaction, 'journalEntry'>,
  companyId: string,
): Promise<string> {
  const newest = await database.journalEntry.findFirst({
    where: { companyId },
    orderBy: { id: 'desc' },
    select: { id: true },
  });
  return String(newest?.id ?? 0);
}
