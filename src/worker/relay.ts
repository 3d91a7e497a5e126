import { Injectable } from '@nestjs/common';
import { Mailer } from '../notices/notices.face.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { faultPoint } from '../platform/faults/fault-point.js';
import { WorkQueue } from '../platform/queue/work-queue.js';
import { deliveryEntry, forecastEntry, improvementEntry, outboxEntry, reminderEntry } from './entries.js';

const AT_ONCE = 200;

/** Moves what is due from PostgreSQL to the queue; any number of relays may run, none takes another's rows. */
@Injectable()
export class Relay {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly queue: WorkQueue,
    private readonly mailer: Mailer,
  ) {}

  /** Moves everything that is due now. @returns how many rows were moved. */
  async run(): Promise<number> {
    let moved = 0;
    const moves = [
      () => this.outbox(),
      () => this.reminders(),
      () => this.deliveries(),
      () => this.improvements(),
      () => this.forecasts(),
    ];
    for (const move of moves) {
      for (let count = AT_ONCE; count === AT_ONCE; moved += count) count = await move();
    }
    return moved;
  }

  private outbox(): Promise<number> {
    return this.database.$transaction(async (tx) => {
      const now = this.clock.now();
      const rows = await tx.$queryRaw<{ id: bigint }[]>`
        select id from "Outbox" where "doneAt" is null and "queuedAt" is null and "dueAt" <= ${now}
        order by id limit ${AT_ONCE} for update skip locked`;
      if (rows.length === 0) return 0;
      await this.queue.add(rows.map(outboxEntry));
      await faultPoint('after-relay-queued');
      await tx.outbox.updateMany({
        where: { id: { in: rows.map(({ id }) => id) } },
        data: { queuedAt: now },
      });
      return rows.length;
    });
  }

  private reminders(): Promise<number> {
    return this.database.$transaction(async (tx) => {
      const now = this.clock.now();
      const rows = await tx.$queryRaw<{ id: string; generation: number }[]>`
        select id, generation from "Reminder" where state = 'pending' and "queuedAt" is null and "dueAt" <= ${now}
        order by "dueAt", id limit ${AT_ONCE} for update skip locked`;
      if (rows.length === 0) return 0;
      await this.queue.add(rows.map(reminderEntry));
      await tx.reminder.updateMany({
        where: { id: { in: rows.map(({ id }) => id) } },
        data: { queuedAt: now },
      });
      return rows.length;
    });
  }

  private improvements(): Promise<number> {
    return this.database.$transaction(async (tx) => {
      const rows = await tx.$queryRaw<{ id: string }[]>`
        select id from "Improvement" where state = 'waiting' and "queuedAt" is null
        order by id limit ${AT_ONCE} for update skip locked`;
      if (rows.length === 0) return 0;
      await this.queue.add(rows.map(improvementEntry));
      await tx.improvement.updateMany({
        where: { id: { in: rows.map(({ id }) => id) } },
        data: { queuedAt: this.clock.now() },
      });
      return rows.length;
    });
  }

  /** Forecasts that are to be fetched, of sites where something is still to be done. */
  private forecasts(): Promise<number> {
    return this.database.$transaction(async (tx) => {
      const now = this.clock.now();
      const rows = await tx.$queryRaw<{ siteId: string; generation: number }[]>`
        select feed."siteId", feed.generation from "ForecastFeed" feed
        join "Site" site on site.id = feed."siteId" and site."forecastSource" <> 'uploaded'
        where feed."queuedAt" is null and feed."dueAt" <= ${now}
          and exists (select 1 from "Job" job where job."siteId" = site.id and job.state in ('entered', 'running'))
        order by feed."dueAt", feed."siteId" limit ${AT_ONCE} for update of feed skip locked`;
      if (rows.length === 0) return 0;
      await this.queue.add(rows.map(forecastEntry));
      await tx.forecastFeed.updateMany({
        where: { siteId: { in: rows.map(({ siteId }) => siteId) } },
        data: { queuedAt: now },
      });
      return rows.length;
    });
  }

  /** Deliveries whose quiet hours are over. Their row must be free before the consumer looks at it, so it is written first. */
  private async deliveries(): Promise<number> {
    if (!this.mailer.isSet) return 0;
    const rows = await this.database.$queryRaw<{ id: string }[]>`
      update "Delivery" set "notBefore" = null where id in (
        select id from "Delivery" where state = 'claimed' and "notBefore" <= ${this.clock.now()}
        order by id limit ${AT_ONCE} for update skip locked)
      returning id`;
    await this.queue.add(rows.map(({ id }) => deliveryEntry(id)));
    return rows.length;
  }
}
