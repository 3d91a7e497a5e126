import { SIGNED_OUT } from '../api/ask.js';
import type { Delivered } from './outbox/outbox.js';
import type { OutboxRecord } from './outbox/outbox-record.js';

/** A picture may take as long on a weak signal, in milliseconds; after that the try counts as lost. */
const PATIENCE = 120_000;

interface Answer {
  readonly answer?: 'applied' | 'alreadyApplied';
  readonly message?: string;
}

/** One try to bring a photo to the service; its bytes are the body, what is told of it stands in the address. */
export async function deliverPhoto(record: OutboxRecord, bytes: ArrayBuffer | null): Promise<Delivered> {
  if (!bytes || !record.file)
    return refused('The picture is not on this device any more. Take it again if it is still wanted.');
  try {
    const response = await fetch(`/files/photos?${photoQuery(record)}`, {
      method: 'POST',
      headers: { 'content-type': record.file.type },
      body: bytes,
      signal: AbortSignal.timeout(PATIENCE),
    });
    const answer = (await response.json().catch(() => ({}))) as Answer;
    if (response.status === 401) dispatchEvent(new Event(SIGNED_OUT));
    return photoOutcome(response.status, answer);
  } catch {
    return {
      state: 'unreachable',
      message: 'The service cannot be reached. Check the connection and try again.',
    };
  }
}

/** What is told of a photo, as the address has it. */
export function photoQuery({ key, input }: Pick<OutboxRecord, 'key' | 'input'>): URLSearchParams {
  const told = Object.entries(input).flatMap(([name, value]) =>
    typeof value === 'string' && value !== '' ? [[name, value] as [string, string]] : [],
  );
  return new URLSearchParams([...told, ['clientKey', key], ['fromOutbox', 'true']]);
}

/** What an answer means for the photo. */
export function photoOutcome(status: number, { answer, message }: Answer): Delivered {
  if (status === 200 || status === 201) {
    const said = answer === 'alreadyApplied' ? 'It was on record already.' : 'Recorded.';
    return { state: 'done', message: said, details: [] };
  }
  if (status === 401) return { state: 'signed-out', message: message ?? 'Sign in first.' };
  if (status >= 400 && status < 500 && status !== 408 && status !== 429)
    return refused(message ?? 'The service did not take this photo. Take it again.');
  return { state: 'failed', message: message ?? 'Something went wrong in the service. It is tried again.' };
}

const refused = (message: string): Delivered => ({ state: 'refused', message, details: [] });
