import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { StoredRecord } from '../sends/outbox/outbox-record.js';

/** What this device keeps of a person's work. */
export interface DeviceSchema extends DBSchema {
  /** Changes without an answer, and answers not yet put away, in the order they were made. */
  outbox: { key: number; value: StoredRecord; indexes: { key: string } };
  /** Pictures that go with changes, by the key of the change. */
  files: { key: string; value: ArrayBuffer };
  /** The answers seen last, by the name of their question. */
  answers: { key: string; value: unknown };
}

export type DeviceDatabase = IDBPDatabase<DeviceSchema>;

/** Raised with every change of the stores; records inside them carry a version of their own. */
const VERSION = 2;

/**
 * Opens what the device keeps. A page of an older version lets go when a newer one has to change the stores.
 *
 * @throws DOMException when the device keeps nothing for pages, or a newer version of the client was here.
 */
export function openDevice(name = 'flagway'): Promise<DeviceDatabase> {
  return openDB<DeviceSchema>(name, VERSION, {
    upgrade(database, from) {
      if (from < 1) {
        const outbox = database.createObjectStore('outbox', { keyPath: 'seq', autoIncrement: true });
        outbox.createIndex('key', 'key', { unique: true });
        database.createObjectStore('answers');
      }
      if (from < 2) database.createObjectStore('files');
    },
    blocking: (_from, _to, event) => (event.target as IDBDatabase).close(),
  });
}

let opened: Promise<DeviceDatabase> | null = null;

/** The one connection of this page. */
export function device(): Promise<DeviceDatabase> {
  opened ??= openDevice();
  return opened;
}
