import { Injectable } from '@nestjs/common';
import { Clock } from '../clock/clock.js';
import { Database } from '../database/database.js';
import { MOST_ATTEMPTS } from '../queue/retry-delay.js';
import { WorkQueue } from '../queue/work-queue.js';

/** What a probe of the service learns. */
export interface Readiness {
  readonly ready: boolean;
  readonly database: 'answers' | 'does not answer';
  readonly queue: 'answers' | 'does not answer';
  /** Entries the queue holds; null while it does not answer. */
  readonly queued: number | null;
  /** Age in seconds of the oldest due outbox row that is not done; null when there is none. */
  readonly oldestUnsentSeconds: number | null;
  /** Outbox rows that were given up after all attempts. */
  readonly givenUp: number | null;
}

/** Asks the database and the queue whether they answer. */
@Injectable()
export class HealthService {
  constructor(
    private readonly database: Database,
    private readonly queue: WorkQueue,
    private readonly clock: Clock,
  ) {}

  async readiness(): Promise<Readiness> {
    const outbox = await this.outbox().catch(() => null);
    const queued = await this.queue.held().catch(() => null);
    return {
      ready: outbox !== null && queued !== null,
      database: outbox ? 'answers' : 'does not answer',
      queue: queued === null ? 'does not answer' : 'answers',
      queued,
      oldestUnsentSeconds: outbox?.oldestUnsentSeconds ?? null,
      givenUp: outbox?.givenUp ?? null,
    };
  }

  private async outbox(): Promise<{ oldestUnsentSeconds: number | null; givenUp: number }> {
    const now = this.clock.now();
    const oldest = await this.database.outbox.findFirst({
      where: { doneAt: null, dueAt: { lte: now } },
      orderBy: { dueAt: 'asc' },
      select: { dueAt: true },
    });
    const givenUp = await this.database.outbox.count({
      where: { doneAt: null, attempts: { gte: MOST_ATTEMPTS } },
    });
    return {
      oldestUnsentSeconds: oldest && Math.round((now.getTime() - oldest.dueAt.getTime()) / 1000),
      givenUp,
    };
  }
}
