import { device } from '../../device/device-database.js';
import { deliver } from '../deliver.js';
import { ofTheSite } from '../site-changes.js';
import { takeFirstRecords } from './first-records.js';
import { Outbox } from './outbox.js';
import { deviceStore, memoryStore, type OutboxStore } from './outbox-store.js';

const NAME = 'flagway.outbox';

/** The outbox of this page. */
export interface PageOutbox {
  readonly outbox: Outbox;
  /** Why this device keeps nothing; null when it does. */
  readonly fault: string | null;
}

/** Opens the outbox of a person: on the device, or for as long as the page lasts where the device keeps nothing. */
export async function openPageOutbox(personId: string): Promise<PageOutbox> {
  const { store, fault } = await storeOf(personId);
  const channel = new BroadcastChannel(NAME);
  const outbox = new Outbox({
    store,
    deliver,
    alone,
    announce: () => channel.postMessage(personId),
    newKey: () => crypto.randomUUID(),
    ofTheSite,
  });
  channel.addEventListener('message', () => void outbox.refresh());
  await outbox.open();
  return { outbox, fault };
}

async function storeOf(personId: string): Promise<{ store: OutboxStore; fault: string | null }> {
  try {
    await device();
    const store = deviceStore(device, personId);
    await takeFirstRecords(store, personId, localStorage);
    return { store, fault: null };
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    const newer = error.name === 'VersionError';
    const fault = newer
      ? 'A newer version of this page was on this device. Load the page again before you enter anything.'
      : 'This device keeps nothing for pages (a private window?). What is unsent is lost when the page is left.';
    return { store: memoryStore(), fault };
  }
}

/** One sender over all pages of the device. Pages without locks send all the same: keys keep it one effect. */
async function alone(work: () => Promise<void>): Promise<void> {
  if ('locks' in navigator) await navigator.locks.request(NAME, work);
  else await work();
}
