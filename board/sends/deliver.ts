import { ask, AskError } from '../api/ask.js';
import type { TypedDocumentString } from '../api/documents.js';
import { CHANGE_DOCUMENTS } from './change-documents.js';
import { deliverPhoto } from './deliver-photo.js';
import type { Delivered } from './outbox/outbox.js';
import type { OutboxRecord } from './outbox/outbox-record.js';
import { type Outcome, readOutcome } from './read-outcome.js';

/** A try without an answer for so long, in milliseconds, counts as lost; the next one cannot do it twice. */
const PATIENCE = 20_000;

/** One try to bring a change to the service. */
export async function deliver(record: OutboxRecord, bytes: ArrayBuffer | null): Promise<Delivered> {
  if (record.change === 'addPhoto') return deliverPhoto(record, bytes);
  const known = CHANGE_DOCUMENTS[record.change as keyof typeof CHANGE_DOCUMENTS] as
    TypedDocumentString<{ outcome: Outcome }, unknown> | undefined;
  if (!known) return unknownChange(record.change);
  try {
    const input = { ...record.input, clientKey: record.key, fromOutbox: true };
    const { outcome } = await ask(known, { input }, AbortSignal.timeout(PATIENCE));
    return readOutcome(outcome);
  } catch (error) {
    return afterFault(error);
  }
}

function unknownChange(change: string): Delivered {
  const message = `This version does not know the change "${change}". Load the page again; if it stays, enter it anew.`;
  return { state: 'refused', message, details: [] };
}

/** What a try without an outcome means for the change. */
function afterFault(error: unknown): Delivered {
  const message = error instanceof Error ? error.message : String(error);
  if (!(error instanceof AskError)) return { state: 'failed', message };
  switch (error.fault) {
    case 'not-allowed':
    case 'bad-request':
      return { state: 'refused', message, details: [] };
    case 'failed':
      return { state: 'failed', message };
    default:
      return { state: error.fault, message };
  }
}
