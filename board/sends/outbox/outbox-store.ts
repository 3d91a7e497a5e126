import type { DeviceDatabase } from '../../device/device-database.js';
import { type OutboxRecord, readRecord, type StoredRecord } from './outbox-record.js';

/** Where the records of one person lie, in the order they were made. */
export interface OutboxStore {
  /** Keeps a record with the bytes of its picture, both or neither. */
  add(record: OutboxRecord, bytes?: ArrayBuffer | null): Promise<void>;
  all(): Promise<{ readonly records: readonly OutboxRecord[]; readonly unreadable: number }>;
  /** The bytes of the picture that goes with a record. */
  bytesOf(key: string): Promise<ArrayBuffer | null>;
  /** Writes a record unless it was taken out meanwhile. */
  update(record: OutboxRecord): Promise<void>;
  remove(key: string): Promise<void>;
}

/** The store on the device. Every write is on the disk before it counts. */
export function deviceStore(open: () => Promise<DeviceDatabase>, personId: string): OutboxStore {
  const STRICT = { durability: 'strict' } as const;
  return {
    async add(record, bytes = null) {
      const write = (await open()).transaction(['outbox', 'files'], 'readwrite', STRICT);
      const outbox = write.objectStore('outbox');
      if ((await outbox.index('key').getKey(record.key)) === undefined) {
        if (bytes) await write.objectStore('files').put(bytes, record.key);
        await outbox.add(record as unknown as StoredRecord);
      }
      await write.done;
    },
    async all() {
      const stored = (await (await open()).getAll('outbox')).filter((one) => one['personId'] === personId);
      const records = stored.flatMap((one) => readRecord(one) ?? []);
      return { records, unreadable: stored.length - records.length };
    },
    bytesOf: async (key) => (await (await open()).get('files', key)) ?? null,
    async update(record) {
      const write = (await open()).transaction('outbox', 'readwrite', STRICT);
      const seq = await write.store.index('key').getKey(record.key);
      if (seq !== undefined) await write.store.put({ ...record, seq });
      await write.done;
    },
    async remove(key) {
      const write = (await open()).transaction(['outbox', 'files'], 'readwrite', STRICT);
      const outbox = write.objectStore('outbox');
      const seq = await outbox.index('key').getKey(key);
      if (seq !== undefined) await outbox.delete(seq);
      await write.objectStore('files').delete(key);
      await write.done;
    },
  };
}

/** A store that lasts as long as the page, for a device that keeps nothing. */
export function memoryStore(): OutboxStore {
  const records = new Map<string, OutboxRecord>();
  const files = new Map<string, ArrayBuffer>();
  const put = (record: OutboxRecord, when: boolean): Promise<void> => {
    if (when) records.set(record.key, record);
    return Promise.resolve();
  };
  return {
    add: (record, bytes = null) => {
      if (bytes && !records.has(record.key)) files.set(record.key, bytes);
      return put(record, !records.has(record.key));
    },
    all: () => Promise.resolve({ records: [...records.values()], unreadable: 0 }),
    bytesOf: (key) => Promise.resolve(files.get(key) ?? null),
    update: (record) => put(record, records.has(record.key)),
    remove: (key) => {
      files.delete(key);
      return Promise.resolve(void records.delete(key));
    },
  };
}
