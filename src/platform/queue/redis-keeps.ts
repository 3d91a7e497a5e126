import type { Redis } from 'ioredis';

/** The settings of a Redis server that decide whether it keeps a queue. */
export interface RedisKeeping {
  /** `maxmemory-policy`. */
  readonly evicts: string;
  /** `appendonly`. */
  readonly appendOnly: string;
  /** `save`: points at which a snapshot is written; empty means never. */
  readonly save: string;
}

/** What must be set otherwise before a server can hold the queue; empty when it keeps what it is given. */
export function keepingFaults({ evicts, appendOnly, save }: RedisKeeping): string[] {
  const faults: string[] = [];
  if (evicts !== 'noeviction') {
    faults.push(
      `it throws entries away when memory is short (maxmemory-policy is "${evicts}"); set "maxmemory-policy noeviction"`,
    );
  }
  if (appendOnly !== 'yes' && save.trim() === '') {
    faults.push('it keeps nothing on disk (appendonly is "no" and save is empty); set "appendonly yes"');
  }
  return faults;
}

/**
 * Refuses a Redis server that may lose the queue.
 *
 * @throws Error saying what to set in redis.conf.
 */
export async function demandKeepingRedis(redis: Redis): Promise<void> {
  const setting = async (name: string): Promise<string> => {
    const [, value] = (await redis.config('GET', name)) as [string?, string?];
    return value ?? '';
  };
  const faults = keepingFaults({
    evicts: await setting('maxmemory-policy'),
    appendOnly: await setting('appendonly'),
    save: await setting('save'),
  });
  if (faults.length > 0) {
    throw new Error(
      `The Redis of REDIS_URL cannot hold the queue: ${faults.join('; and ')} in redis.conf, then start again.`,
    );
  }
}
