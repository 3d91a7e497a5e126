import { type FirstRecord, fromFirst } from './outbox-record.js';
import type { OutboxStore } from './outbox-store.js';

const PREFIX = 'flagway.unsent.';

/** Moves what the first version of the client kept for this person into the outbox, once. */
export async function takeFirstRecords(store: OutboxStore, personId: string, kept: Storage): Promise<void> {
  const text = kept.getItem(PREFIX + personId);
  if (!text) return;
  const records = firstRecords(text);
  // Cut off in the middle by the device: set aside rather than lost, and the page stays usable.
  if (!records) kept.setItem(`${PREFIX}${personId}.unreadable`, text);
  // That list has the newest first.
  for (const record of records?.toReversed() ?? []) await store.add(fromFirst(record, personId));
  kept.removeItem(PREFIX + personId);
}

function firstRecords(text: string): FirstRecord[] | null {
  try {
    return JSON.parse(text) as FirstRecord[];
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return null;
  }
}
