import { createRedisBackend, withBackend } from 'bullmq';
import { Redis } from 'ioredis';
import type { QueueBackend } from './queue-backend.js';
import type { QueueEntry } from './queue-entry.js';
import { demandKeepingRedis } from './redis-keeps.js';

const { Queue, Worker } = withBackend(createRedisBackend);

/** The queue in a Redis server. */
export function redisBackend(url: string, prefix: string): QueueBackend {
  const opened: Redis[] = [];
  const connect = (maxRetriesPerRequest: number | null): Redis => {
    const redis = new Redis(url, { maxRetriesPerRequest });
    // Every user of the connection reports errors through its own listener; without one here they would be thrown.
    redis.on('error', () => undefined);
    opened.push(redis);
    return redis;
  };
  return {
    name: 'redis',
    prepare: async () => {
      const probe = new Redis(url, { lazyConnect: true, maxRetriesPerRequest: 0, retryStrategy: () => null });
      probe.on('error', () => undefined);
      try {
        await probe.connect();
        await demandKeepingRedis(probe);
      } finally {
        probe.disconnect();
      }
    },
    // A producer fails at once while the server is away: the relay keeps the row and comes again.
    producer: (lane) =>
      new Queue<QueueEntry>(lane, {
        connection: connect(1),
        prefix,
        skipWaitingForReady: true,
      }),
    consumer: (lane, handle, options) =>
      new Worker<QueueEntry>(lane, handle, {
        ...options,
        connection: connect(null),
        prefix,
      }),
    close: async () => {
      await Promise.all(opened.map((redis) => redis.quit().catch(() => redis.disconnect())));
    },
  };
}
