import { spawn } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { freePort } from '../../scripts/postgres/free-port.js';
import { parseConfig } from '../../src/platform/config/config.js';
import type { QueueEntry } from '../../src/platform/queue/queue-entry.js';
import { WorkQueue } from '../../src/platform/queue/work-queue.js';
import { startRedis, type TestRedis } from '../support/redis.js';
import { until } from '../support/until.js';

const queueOn = (url: string): WorkQueue =>
  new WorkQueue(parseConfig({ DATABASE_URL: 'postgresql://nobody@127.0.0.1:1/none', REDIS_URL: url }));

const entry: QueueEntry = { kind: 'outbox', id: '1', generation: 1 };

describe('a Redis that may lose entries', () => {
  /** Tries to open the queue on a Redis with these arguments; gives what was refused. */
  async function refusalWith(...args: string[]): Promise<string> {
    const port = await freePort();
    const folder = mkdtempSync(join(tmpdir(), 'flagway-redis-'));
    const server = spawn(
      'redis-server',
      ['--port', String(port), '--bind', '127.0.0.1', '--dir', folder, ...args],
      { stdio: 'ignore' },
    );
    const ended = new Promise((resolve) => server.once('exit', resolve));
    const queue = queueOn(`redis://127.0.0.1:${port}`);
    let refusal = '';
    try {
      await until('the server answers', async () => {
        refusal = await queue.open().then(
          () => 'none',
          (error: Error) => error.message,
        );
        return !refusal.includes('ECONNREFUSED') && !refusal.includes('Connection is closed');
      });
      return refusal;
    } finally {
      await queue.onModuleDestroy();
      server.kill('SIGKILL');
      await ended;
    }
  }

  test('is refused when it evicts, saying what to set', async () => {
    const refusal = await refusalWith('--appendonly', 'yes', '--maxmemory-policy', 'allkeys-lru');
    expect(refusal).toContain('maxmemory-policy is "allkeys-lru"');
    expect(refusal).toContain('set "maxmemory-policy noeviction"');
    expect(refusal).not.toContain('appendonly');
  });

  test('is refused when it keeps nothing on disk, saying what to set', async () => {
    const refusal = await refusalWith('--appendonly', 'no', '--save', '');
    expect(refusal).toContain('set "appendonly yes"');
    expect(refusal).not.toContain('maxmemory-policy');
  });

  test('is refused with both faults in one message', async () => {
    const refusal = await refusalWith('--save', '', '--maxmemory-policy', 'volatile-ttl');
    expect(refusal).toContain('maxmemory-policy noeviction');
    expect(refusal).toContain('appendonly yes');
  });

  test('is taken when it writes snapshots and does not evict', async () => {
    expect(await refusalWith('--appendonly', 'no', '--save', '60 1')).toBe('none');
  });
});

describe('a Redis that goes away', () => {
  let redis: TestRedis;
  let queue: WorkQueue;

  beforeAll(async () => {
    redis = await startRedis();
    queue = queueOn(redis.url);
    await queue.open();
  });

  afterAll(async () => {
    await redis.start();
    await queue.onModuleDestroy();
    await redis.stop();
  });

  test('comes back with what it was given', async () => {
    await queue.add([entry]);
    await redis.kill();
    await redis.start();
    await until('it answers', () =>
      queue.held().then(
        (held) => held === 1,
        () => false,
      ),
    );
    const seen: QueueEntry[] = [];
    const consumption = await queue.consume((one) => Promise.resolve(void seen.push(one)));
    await until('the entry is seen', () => seen.length === 1);
    await consumption.close();
    expect(seen).toEqual([entry]);
  });

  test('makes adding fail while it is away instead of waiting for ever', async () => {
    await redis.kill();
    await expect(queue.add([entry])).rejects.toThrow();
    await redis.start();
    await until('it takes entries again', () =>
      queue.add([entry]).then(
        () => true,
        () => false,
      ),
    );
    expect(await queue.held()).toBe(1);
  });

  test('has its consumers go on by themselves after it is back', async () => {
    const seen: string[] = [];
    const consumption = await queue.consume(({ id }) => Promise.resolve(void seen.push(id)));
    await redis.kill();
    await redis.start();
    await until('it takes entries', () =>
      queue.add([{ ...entry, id: '2' }]).then(
        () => true,
        () => false,
      ),
    );
    await until('the entry is seen', () => seen.includes('2'));
    await consumption.close();
    expect(seen).toContain('2');
  });
});
