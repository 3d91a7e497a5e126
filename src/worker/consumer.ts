import { Injectable } from '@nestjs/common';
import { DeliverySender } from '../notices/notices.face.js';
import { faultPoint } from '../platform/faults/fault-point.js';
import { log } from '../platform/log.js';
import type { QueueEntry } from '../platform/queue/queue-entry.js';
import { WorkQueue } from '../platform/queue/work-queue.js';
import { Improver } from '../planning/planning.face.js';
import { ReminderFirer } from '../reminders/reminders.face.js';
import { ForecastFetcher } from '../weather/weather.face.js';
import { deliveryEntry } from './entries.js';
import { OutboxAnnouncer } from './outbox-announcer.js';

/** Works off the queue. Every entry is looked up again in PostgreSQL: only the row says what is still to be done. */
@Injectable()
export class Consumer {
  constructor(
    private readonly queue: WorkQueue,
    private readonly outbox: OutboxAnnouncer,
    private readonly firer: ReminderFirer,
    private readonly sender: DeliverySender,
    private readonly improver: Improver,
    private readonly forecasts: ForecastFetcher,
  ) {}

  /** Does one piece of work. @throws Error when it is to be tried again. */
  async work(entry: QueueEntry): Promise<void> {
    try {
      await this.workOn(entry);
    } catch (error) {
      log('warn', 'A piece of work failed and is tried again', {
        ...entry,
        error: error instanceof Error ? error.message : String(error),
      });
      throw error;
    }
  }

  private async workOn({ kind, id, generation }: QueueEntry): Promise<void> {
    switch (kind) {
      case 'outbox':
        return this.handOn(await this.outbox.announce(BigInt(id)));
      case 'reminder':
        return this.handOn(await this.firer.fire(id, generation));
      case 'delivery':
        return this.sender.send(id);
      case 'improvement':
        return this.improver.begin(id);
      case 'forecast':
        return this.forecasts.fetch(id, generation);
    }
  }

  private async handOn(deliveryIds: readonly string[]): Promise<void> {
    if (deliveryIds.length === 0) return;
    await faultPoint('after-delivery-claimed');
    await this.queue.add(deliveryIds.map(deliveryEntry));
  }
}
