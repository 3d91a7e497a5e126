import { Inject, Injectable, type OnModuleDestroy } from '@nestjs/common';
import { CONFIG, type Config } from '../config/config.js';
import { log } from '../log.js';
import { postgresBackend } from './postgres-backend.js';
import type { Consumer, Producer, QueueBackend, WorkHandler } from './queue-backend.js';
import { entryName, type QueueEntry } from './queue-entry.js';
import { redisBackend } from './redis-backend.js';
import { MOST_ATTEMPTS, retryDelay } from './retry-delay.js';

const AT_ONCE = 4;
const LOCK_MILLISECONDS = 10_000;
const STALLED_CHECK_MILLISECONDS = 5_000;

/**
 * The queue of the service. It holds ids only and may be lost without losing work: what is to be done stands in
 * PostgreSQL, and the sweep puts back whatever is missing here.
 */
@Injectable()
export class WorkQueue implements OnModuleDestroy {
  readonly backend: QueueBackend;
  private producer: Producer | null = null;
  private readonly consumers = new Set<Consumer>();

  constructor(@Inject(CONFIG) config: Config) {
    this.backend = config.REDIS_URL
      ? redisBackend(config.REDIS_URL, config.FLAGWAY_QUEUE_PREFIX)
      : postgresBackend(config.DATABASE_URL, config.FLAGWAY_QUEUE_PREFIX);
  }

  /**
   * Connects; called once at boot by every process.
   *
   * @throws Error saying what to set when the server may lose entries, or cannot be reached.
   */
  async open(): Promise<void> {
    if (this.producer) return;
    await this.backend.prepare();
    this.producer = this.backend.producer();
    this.producer.on('error', (error) => log('warn', 'The queue reports', { error: error.message }));
  }

  /** Adds entries; one that the queue still holds, waiting or at work, is left alone. */
  async add(entries: readonly QueueEntry[]): Promise<void> {
    if (entries.length === 0) return;
    await this.opened().addBulk(
      entries.map((entry) => ({
        name: entry.kind,
        data: entry,
        opts: {
          jobId: entryName(entry),
          attempts: MOST_ATTEMPTS,
          backoff: { type: 'custom' },
          removeOnComplete: true,
          removeOnFail: true,
        },
      })),
    );
  }

  /** Works off entries until `close` of what it returns, which waits for those at work. */
  async consume(handle: WorkHandler): Promise<{ close(): Promise<void> }> {
    this.opened();
    const consumer = this.backend.consumer((job) => handle(job.data), {
      concurrency: AT_ONCE,
      lockDuration: LOCK_MILLISECONDS,
      stalledInterval: STALLED_CHECK_MILLISECONDS,
      maxStalledCount: MOST_ATTEMPTS,
      settings: { backoffStrategy: retryDelay },
    });
    consumer.on('error', (error) => log('warn', 'The queue reports', { error: error.message }));
    this.consumers.add(consumer);
    await consumer.waitUntilReady();
    return {
      close: async () => {
        this.consumers.delete(consumer);
        await consumer.close();
      },
    };
  }

  /** Entries that wait, are at work or wait for another attempt. @throws Error when the server does not answer. */
  held(): Promise<number> {
    return this.opened().getJobCountByTypes('waiting', 'active', 'delayed');
  }

  async onModuleDestroy(): Promise<void> {
    for (const consumer of this.consumers) await consumer.close();
    await this.producer?.close();
    await this.backend.close();
  }

  private opened(): Producer {
    if (!this.producer) throw new Error('The queue is used before it was opened; call open() at boot.');
    return this.producer;
  }
}
