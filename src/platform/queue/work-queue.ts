import { Inject, Injectable, type OnModuleDestroy } from '@nestjs/common';
import { CONFIG, type Config } from '../config/config.js';
import { log } from '../log.js';
import { postgresBackend } from './postgres-backend.js';
import type { Consumer, Producer, QueueBackend, WorkHandler } from './queue-backend.js';
import { entryName, type Lane, laneOf, LANES, type QueueEntry } from './queue-entry.js';
import { redisBackend } from './redis-backend.js';
import { MOST_ATTEMPTS, retryDelay } from './retry-delay.js';

const WORK_AT_ONCE = 4;
const LOCK_MILLISECONDS = 10_000;
const STALLED_CHECK_MILLISECONDS = 5_000;

/**
 * The queue of the service. It holds ids only and may be lost without losing work: what is to be done stands in
 * PostgreSQL, and the sweep puts back whatever is missing here.
 */
@Injectable()
export class WorkQueue implements OnModuleDestroy {
  readonly backend: QueueBackend;
  private producers: ReadonlyMap<Lane, Producer> | null = null;
  private readonly atOnce: Readonly<Record<Lane, number>>;
  private readonly consumers = new Set<Consumer>();

  constructor(@Inject(CONFIG) config: Config) {
    this.atOnce = { work: WORK_AT_ONCE, fetch: config.FLAGWAY_FORECASTS_AT_ONCE };
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
    if (this.producers) return;
    await this.backend.prepare();
    this.producers = new Map(LANES.map((lane) => [lane, this.backend.producer(lane)]));
    for (const producer of this.producers.values())
      producer.on('error', (error) => log('warn', 'The queue reports', { error: error.message }));
  }

  /** Adds entries; one that the queue still holds, waiting or at work, is left alone. */
  async add(entries: readonly QueueEntry[]): Promise<void> {
    for (const [lane, producer] of this.opened()) {
      const own = entries.filter((entry) => laneOf(entry) === lane);
      if (own.length > 0) await this.addTo(producer, own);
    }
  }

  private async addTo(producer: Producer, entries: readonly QueueEntry[]): Promise<void> {
    await producer.addBulk(
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
    const consumers = LANES.map((lane) => this.consumer(lane, handle));
    await Promise.all(consumers.map((consumer) => consumer.waitUntilReady()));
    return {
      close: async () => {
        for (const consumer of consumers) this.consumers.delete(consumer);
        await Promise.all(consumers.map((consumer) => consumer.close()));
      },
    };
  }

  private consumer(lane: Lane, handle: WorkHandler): Consumer {
    const consumer = this.backend.consumer(lane, (job) => handle(job.data), {
      concurrency: this.atOnce[lane],
      lockDuration: LOCK_MILLISECONDS,
      stalledInterval: STALLED_CHECK_MILLISECONDS,
      maxStalledCount: MOST_ATTEMPTS,
      settings: { backoffStrategy: retryDelay },
    });
    consumer.on('error', (error) => log('warn', 'The queue reports', { error: error.message }));
    this.consumers.add(consumer);
    return consumer;
  }

  /** Entries that wait, are at work or wait for another attempt. @throws Error when the server does not answer. */
  async held(): Promise<number> {
    const counts = [...this.opened().values()].map((producer) =>
      producer.getJobCountByTypes('waiting', 'active', 'delayed'),
    );
    return (await Promise.all(counts)).reduce((sum, count) => sum + count, 0);
  }

  async onModuleDestroy(): Promise<void> {
    for (const consumer of this.consumers) await consumer.close();
    for (const producer of this.producers?.values() ?? []) await producer.close();
    await this.backend.close();
  }

  private opened(): ReadonlyMap<Lane, Producer> {
    if (!this.producers) throw new Error('The queue is used before it was opened; call open() at boot.');
    return this.producers;
  }
}
