import type { DeviceDatabase } from '../../device/device-database.js';
import { type OutboxRecord, readRecord, type StoredRecord } from './outbox-record.js';

/** Where the records of one person lie, in the order they were made. */
export interface OutboxStore {
  add(record: OutboxRecord): Promise<void>;
  all(): Promise<{ readonly records: readonly OutboxRecord[]; readonly unreadable: number }>;
  /** Writes a record unless it was taken out meanwhile. */
  update(record: OutboxRecord): Promise<void>;
  remove(key: string): Promise<void>;
}

/** The store on the device. Every write is on the disk before it counts. */
export function deviceStore(open: () => Promise<DeviceDatabase>, personId: string): OutboxStore {
  const STRICT = { durability: 'strict' } as const;
  return {
    async add(record) {
      const write = (await open()).transaction('outbox', 'readwrite', STRICT);
      if ((await write.store.index('key').getKey(record.key)) === undefined)
        await write.store.add(record as unknown as StoredRecord);
      await write.done;
    },
    async all() {
      const stored = (await (await open()).getAll('outbox')).filter((one) => one['personId'] === personId);
      const records = stored.flatMap((one) => readRecord(one) ?? []);
      return { records, unreadable: stored.length - records.length };
    },
    async update(record) {
      const write = (await open()).transaction('outbox', 'readwrite', STRICT);
      const seq = await write.store.index('key').getKey(record.key);
      if (seq !== undefined) await write.store.put({ ...record, seq });
      await write.done;
    },
    async remove(key) {
      const write = (await open()).transaction('outbox', 'readwrite', STRICT);
      const seq = await write.store.index('key').getKey(key);
      if (seq !== undefined) await write.store.delete(seq);
      await write.done;
    },
  };
}

/** A store that lasts as long as the page, for a device that keeps nothing. */
export function memoryStore(): OutboxStore {
  const records = new Map<string, OutboxRecord>();
  const put = (record: OutboxRecord, when: boolean): Promise<void> => {
    if (when) records.set(record.key, record);
    return Promise.resolve();
  };
  return {
    add: (record) => put(record, !records.has(record.key)),
    all: () => Promise.resolve({ records: [...records.values()], unreadable: 0 }),
    update: (record) => put(record, records.has(record.key)),
    remove: (key) => Promise.resolve(void records.delete(key)),
  };
}
