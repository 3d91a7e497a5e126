import { Injectable } from '@nestjs/common';
import { Mailer } from '../notices/notices.face.js';
import { Database } from '../platform/database/database.js';
import type { QueueEntry } from '../platform/queue/queue-entry.js';
import { MOST_ATTEMPTS } from '../platform/queue/retry-delay.js';
import { WorkQueue } from '../platform/queue/work-queue.js';
import { deliveryEntry, forecastEntry, improvementEntry, outboxEntry, reminderEntry } from './entries.js';

const AT_ONCE = 500;

/**
 * Puts back whatever the queue has lost: everything that was queued and is not done is added again. The queue ignores
 * what it still holds, and the consumer drops what was done meanwhile, so this needs no clock and repeats nothing.
 */
@Injectable()
export class Sweep {
  constructor(
    private readonly database: Database,
    private readonly queue: WorkQueue,
    private readonly mailer: Mailer,
  ) {}

  /** Gives work that was given up another round of attempts: a restart may have brought what it lacked. */
  async renew(): Promise<void> {
    await this.database.outbox.updateMany({
      where: { doneAt: null, attempts: { gte: MOST_ATTEMPTS } },
      data: { attempts: 0 },
    });
  }

  /** @returns how many entries were offered to the queue. */
  async run(): Promise<number> {
    return (
      (await this.outbox()) +
      (await this.reminders()) +
      (await this.deliveries()) +
      (await this.improvements()) +
      (await this.forecasts())
    );
  }

  private async outbox(): Promise<number> {
    return this.addPages(async (after: bigint | undefined) => {
      const rows = await this.database.outbox.findMany({
        where: {
          doneAt: null,
          queuedAt: { not: null },
          attempts: { lt: MOST_ATTEMPTS },
          ...(after === undefined ? {} : { id: { gt: after } }),
        },
        orderBy: { id: 'asc' },
        take: AT_ONCE,
        select: { id: true },
      });
      return { entries: rows.map(outboxEntry), last: rows.at(-1)?.id };
    });
  }

  private async reminders(): Promise<number> {
    return this.addPages(async (after: string | undefined) => {
      const rows = await this.database.reminder.findMany({
        where: {
          state: 'pending',
          queuedAt: { not: null },
          ...(after === undefined ? {} : { id: { gt: after } }),
        },
        orderBy: { id: 'asc' },
        take: AT_ONCE,
        select: { id: true, generation: true },
      });
      return { entries: rows.map(reminderEntry), last: rows.at(-1)?.id };
    });
  }

  /** Searches that wait, and those at work: the consumer takes over one whose worker is dead, and leaves the others alone. */
  private async improvements(): Promise<number> {
    return this.addPages(async (after: string | undefined) => {
      const rows = await this.database.improvement.findMany({
        where: {
          OR: [{ state: 'waiting', queuedAt: { not: null } }, { state: 'running' }],
          ...(after === undefined ? {} : { id: { gt: after } }),
        },
        orderBy: { id: 'asc' },
        take: AT_ONCE,
        select: { id: true },
      });
      return { entries: rows.map(improvementEntry), last: rows.at(-1)?.id };
    });
  }

  private async forecasts(): Promise<number> {
    return this.addPages(async (after: string | undefined) => {
      const rows = await this.database.forecastFeed.findMany({
        where: { queuedAt: { not: null }, ...(after === undefined ? {} : { siteId: { gt: after } }) },
        orderBy: { siteId: 'asc' },
        take: AT_ONCE,
        select: { siteId: true, generation: true },
      });
      return { entries: rows.map(forecastEntry), last: rows.at(-1)?.siteId };
    });
  }

  private async deliveries(): Promise<number> {
    if (!this.mailer.isSet) return 0;
    return this.addPages(async (after: string | undefined) => {
      const rows = await this.database.delivery.findMany({
        where: { state: 'claimed', notBefore: null, ...(after === undefined ? {} : { id: { gt: after } }) },
        orderBy: { id: 'asc' },
        take: AT_ONCE,
        select: { id: true },
      });
      return { entries: rows.map(({ id }) => deliveryEntry(id)), last: rows.at(-1)?.id };
    });
  }

  private async addPages<Id>(
    page: (after: Id | undefined) => Promise<{ entries: QueueEntry[]; last: Id | undefined }>,
  ): Promise<number> {
    let offered = 0;
    let after: Id | undefined;
    do {
      const { entries, last } = await page(after);
      await this.queue.add(entries);
      offered += entries.length;
      after = entries.length === AT_ONCE ? last : undefined;
    } while (after !== undefined);
    return offered;
  }
}
