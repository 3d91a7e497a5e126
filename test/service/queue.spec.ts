import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { parseConfig } from '../../src/platform/config/config.js';
import type { QueueEntry } from '../../src/platform/queue/queue-entry.js';
import { WorkQueue } from '../../src/platform/queue/work-queue.js';
import { type FreshDatabase, freshDatabase } from '../support/fresh-database.js';
import { startRedis, type TestRedis } from '../support/redis.js';
import { until } from '../support/until.js';

/** The same promises on both servers that can hold the queue. */
describe.each(['postgresql', 'redis'] as const)('the queue on %s', (backend) => {
  let database: FreshDatabase;
  let redis: TestRedis | undefined;
  const opened: WorkQueue[] = [];

  beforeAll(async () => {
    database = await freshDatabase();
    if (backend === 'redis') redis = await startRedis();
  });

  afterAll(async () => {
    for (const queue of opened) await queue.onModuleDestroy();
    await redis?.stop();
    await database.drop();
  });

  async function openQueue(prefix = `t${randomUUID()}`): Promise<WorkQueue> {
    const queue = new WorkQueue(
      parseConfig({
        DATABASE_URL: database.url,
        FLAGWAY_QUEUE_PREFIX: prefix,
        ...(redis ? { REDIS_URL: redis.url } : {}),
      }),
    );
    opened.push(queue);
    await queue.open();
    return queue;
  }

  const outbox = (id: number): QueueEntry => ({ kind: 'outbox', id: String(id), generation: 1 });
  const ignore = () => Promise.resolve();

  test('stands on the server that the settings name', async () => {
    expect((await openQueue()).backend.name).toBe(backend);
  });

  test('hands every entry to a consumer once', async () => {
    const queue = await openQueue();
    const seen: string[] = [];
    const entries = Array.from({ length: 200 }, (_, index) => outbox(index));
    await queue.add(entries);
    const consumption = await queue.consume(({ id }) => Promise.resolve(void seen.push(id)));
    await until('all entries are seen', () => seen.length >= entries.length);
    await until('the queue is empty', async () => (await queue.held()) === 0);
    await consumption.close();
    expect([...seen].sort()).toEqual(entries.map(({ id }) => id).sort());
  });

  test('keeps what is added while nobody consumes, also past the end of the producer', async () => {
    const prefix = `t${randomUUID()}`;
    const before = await openQueue(prefix);
    await before.add([outbox(7)]);
    await before.onModuleDestroy();
    const after = await openQueue(prefix);
    expect(await after.held()).toBe(1);
    const seen: QueueEntry[] = [];
    const consumption = await after.consume((entry) => Promise.resolve(void seen.push(entry)));
    await until('the entry is seen', () => seen.length === 1);
    await consumption.close();
    expect(seen).toEqual([outbox(7)]);
  });

  test('ignores an entry that it still holds', async () => {
    const queue = await openQueue();
    await queue.add([outbox(1)]);
    await queue.add([outbox(1), outbox(2)]);
    expect(await queue.held()).toBe(2);
  });

  test('ignores an entry that is at work', async () => {
    const queue = await openQueue();
    let runs = 0;
    let release = (): void => undefined;
    const held = new Promise<void>((resolve) => (release = resolve));
    await queue.add([outbox(1)]);
    const consumption = await queue.consume(async () => {
      runs += 1;
      await held;
    });
    await until('the work has begun', () => runs === 1);
    await queue.add([outbox(1)]);
    expect(await queue.held()).toBe(1);
    release();
    await until('the queue is empty', async () => (await queue.held()) === 0);
    await consumption.close();
    expect(runs).toBe(1);
  });

  test('takes an entry anew once it was worked off: the row says whether anything is left', async () => {
    const queue = await openQueue();
    let runs = 0;
    const consumption = await queue.consume(() => Promise.resolve(void (runs += 1)));
    await queue.add([outbox(1)]);
    await until('the first run', async () => runs === 1 && (await queue.held()) === 0);
    await queue.add([outbox(1)]);
    await until('the second run', () => runs === 2);
    await consumption.close();
    expect(runs).toBe(2);
  });

  test('tells generations of one reminder apart', async () => {
    const queue = await openQueue();
    const id = randomUUID();
    await queue.add([
      { kind: 'reminder', id, generation: 1 },
      { kind: 'reminder', id, generation: 2 },
    ]);
    expect(await queue.held()).toBe(2);
  });

  test('tries again after a failure and lets others pass meanwhile', async () => {
    const queue = await openQueue();
    const seen: string[] = [];
    const consumption = await queue.consume(({ id }) => {
      seen.push(id);
      if (id === '1' && seen.filter((one) => one === '1').length === 1) throw new Error('not now');
      return Promise.resolve();
    });
    await queue.add([outbox(1), outbox(2)]);
    await until('the second attempt', async () => seen.length === 3 && (await queue.held()) === 0);
    await consumption.close();
    expect(seen).toEqual(expect.arrayContaining(['1', '2', '1']));
    expect(seen.at(-1)).toBe('1');
  });

  test('waits for the work in hand when it is closed', async () => {
    const queue = await openQueue();
    let begun = false;
    let ended = false;
    const consumption = await queue.consume(async () => {
      begun = true;
      await new Promise((resolve) => setTimeout(resolve, 100));
      ended = true;
    });
    await queue.add([outbox(1)]);
    await until('the work has begun', () => begun);
    await consumption.close();
    expect(ended).toBe(true);
  });

  test('shares entries among consumers without giving one to two', async () => {
    const prefix = `t${randomUUID()}`;
    const [one, other] = [await openQueue(prefix), await openQueue(prefix)];
    const seen: string[] = [];
    const look = ({ id }: QueueEntry) => Promise.resolve(void seen.push(id));
    const consumptions = [await one.consume(look), await other.consume(look)];
    await one.add(Array.from({ length: 100 }, (_, index) => outbox(index)));
    await until('all entries are seen', async () => seen.length >= 100 && (await one.held()) === 0);
    for (const consumption of consumptions) await consumption.close();
    expect(new Set(seen).size).toBe(100);
    expect(seen).toHaveLength(100);
  });

  test('keeps installations with different prefixes apart', async () => {
    const [one, other] = [await openQueue(), await openQueue()];
    await one.add([outbox(1)]);
    expect(await other.held()).toBe(0);
  });

  test('may be opened by several processes at once', async () => {
    const prefix = `t${randomUUID()}`;
    const queues = await Promise.all([openQueue(prefix), openQueue(prefix), openQueue(prefix)]);
    await queues[0]?.add([outbox(1)]);
    expect(await queues[2]?.held()).toBe(1);
  });

  test('says so when it is used before it was opened', async () => {
    const queue = new WorkQueue(parseConfig({ DATABASE_URL: database.url }));
    await expect(queue.add([outbox(1)])).rejects.toThrow('call open() at boot');
    await expect(queue.consume(ignore)).rejects.toThrow('call open() at boot');
  });
});
