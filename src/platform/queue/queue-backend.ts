import type { Job, JobsOptions, WorkerOptions } from 'bullmq';
import type { Lane, QueueEntry } from './queue-entry.js';

/** Does one piece of work; throws when it is to be tried again later. */
export type WorkHandler = (entry: QueueEntry) => Promise<void>;

/** What the service needs of a producer, whichever server is behind it. */
export interface Producer {
  addBulk(jobs: { name: string; data: QueueEntry; opts: JobsOptions }[]): Promise<unknown>;
  getJobCountByTypes(...types: ('active' | 'delayed' | 'waiting' | 'failed')[]): Promise<number>;
  on(event: 'error', listener: (error: Error) => void): unknown;
  close(): Promise<void>;
}

/** What the service needs of a consumer. */
export interface Consumer {
  on(event: 'error', listener: (error: Error) => void): unknown;
  waitUntilReady(): Promise<unknown>;
  close(force?: boolean): Promise<void>;
}

/** A server that holds the queue: PostgreSQL or Redis. */
export interface QueueBackend {
  readonly name: 'postgresql' | 'redis';
  /** Checks the server, and sets up what it needs once. @throws Error saying what to set. */
  prepare(): Promise<void>;
  producer(lane: Lane): Producer;
  consumer(
    lane: Lane,
    handle: (job: Job<QueueEntry>) => Promise<void>,
    options: Omit<WorkerOptions, 'connection'>,
  ): Consumer;
  /** Closes what producers and consumers leave open. */
  close(): Promise<void>;
}
