import { Inject, Injectable, type OnModuleDestroy, type OnModuleInit } from '@nestjs/common';
import pg from 'pg';
import { CONFIG, type Config } from '../config/config.js';
import { log } from '../log.js';
import { type Hint, HINT_CHANNEL } from './hint.js';
import { HintStream } from './hint-stream.js';

const RECONNECT_MILLISECONDS = 500;

/** Hears the hints of all processes and gives each subscriber those of its company. */
@Injectable()
export class HintBus implements OnModuleInit, OnModuleDestroy {
  private readonly streams = new Set<HintStream>();
  private readonly wakers = new Set<() => void>();
  private client: pg.Client | null = null;
  private closed = false;
  private retry: NodeJS.Timeout | undefined;

  constructor(@Inject(CONFIG) private readonly config: Config) {}

  async onModuleInit(): Promise<void> {
    await this.connect();
  }

  async onModuleDestroy(): Promise<void> {
    this.closed = true;
    clearTimeout(this.retry);
    for (const stream of this.streams) stream.end();
    await this.client?.end().catch(() => undefined);
  }

  /** The hints of one company from now on; end the stream to stop listening. */
  listen(companyId: string): HintStream {
    const stream = new HintStream(companyId, () => this.streams.delete(stream));
    this.streams.add(stream);
    return stream;
  }

  /** Calls back at every hint of any company, and after a lost connection; for the relay. Returns how to stop. */
  onAny(wake: () => void): () => void {
    this.wakers.add(wake);
    return () => this.wakers.delete(wake);
  }

  private async connect(): Promise<void> {
    const client = new pg.Client({ connectionString: this.config.DATABASE_URL });
    client.on('error', (error) => this.reconnect(error));
    client.on('end', () => this.reconnect());
    client.on('notification', ({ payload }) => this.spread(JSON.parse(payload ?? '{}') as Hint));
    this.client = client;
    await client.connect();
    await client.query(`listen ${HINT_CHANNEL}`);
  }

  /** After a lost connection hints may have been missed: everyone is told to ask for changes again. */
  private reconnect(error?: Error): void {
    if (this.closed || this.retry) return;
    if (error) log('warn', 'The hint connection was lost and is opened again', { error: error.message });
    this.retry = setTimeout(() => {
      this.retry = undefined;
      this.client?.removeAllListeners();
      this.client?.on('error', () => undefined);
      this.connect().then(
        () => {
          for (const stream of this.streams)
            stream.push({ companyId: stream.companyId, changeNumber: '0', jobIds: [] });
          for (const wake of this.wakers) wake();
        },
        (again: Error) => this.reconnect(again),
      );
    }, RECONNECT_MILLISECONDS);
  }

  private spread(hint: Hint): void {
    for (const wake of this.wakers) wake();
    for (const stream of this.streams) if (stream.companyId === hint.companyId) stream.push(hint);
  }
}
