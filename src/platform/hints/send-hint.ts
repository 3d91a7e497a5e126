import type { Transaction } from '../database/database.js';
import { type Hint, HINT_CHANNEL, MOST_JOBS_NAMED } from './hint.js';

/** Tells every process about a change; PostgreSQL sends it only if, and when, the transaction commits. */
export async function sendHint(tx: Transaction, hint: Hint): Promise<void> {
  const jobIds = hint.jobIds.length > MOST_JOBS_NAMED ? [] : hint.jobIds;
  await tx.$executeRaw`select pg_notify(${HINT_CHANNEL}, ${JSON.stringify({ ...hint, jobIds })})`;
}
