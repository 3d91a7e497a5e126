import { Injectable } from '@nestjs/common';
import { Announcer, NoticeKinds } from '../notices/notices.face.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';

/** Lets a due reminder fire: reads it again, marks it too late or turns it into a notice. */
@Injectable()
export class ReminderFirer {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly kinds: NoticeKinds,
    private readonly announcer: Announcer,
  ) {}

  /** @returns ids of the deliveries that may be sent now; none when the reminder moved, was cancelled or has fired. */
  fire(id: string, generation: number): Promise<string[]> {
    return this.database.$transaction(async (tx) => {
      await tx.$queryRaw`select id from "Reminder" where id = ${id}::uuid for update`;
      const reminder = await tx.reminder.findUnique({ where: { id } });
      if (!reminder || reminder.state !== 'pending' || reminder.generation !== generation) return [];
      const now = this.clock.now();
      if (reminder.dueAt > now) return [];
      const { companyId } = reminder;
      if (now > reminder.usefulUntil) {
        await tx.reminder.update({ where: { id }, data: { state: 'tooLate' } });
        return [];
      }
      const kind = this.kinds.of(reminder.kind);
      const announcement = await kind.announce(tx, { companyId, now, ids: { reminderId: id } });
      const deliveries = announcement ? await this.announcer.announce(tx, companyId, kind, announcement) : [];
      await tx.reminder.update({ where: { id }, data: { state: 'sent' } });
      return deliveries;
    });
  }
}
