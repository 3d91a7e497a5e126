import { Injectable } from '@nestjs/common';
import type { Outbox } from '../generated/prisma/client.js';
import { Announcer, NoticeKinds } from '../notices/notices.face.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';

/** Turns an outbox row into its notice, once. */
@Injectable()
export class OutboxAnnouncer {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly kinds: NoticeKinds,
    private readonly announcer: Announcer,
  ) {}

  /**
   * @returns ids of the deliveries that may be sent now.
   * @throws Error when it is to be tried again; the row then shows how often that was, and why.
   */
  async announce(id: bigint): Promise<string[]> {
    try {
      return await this.database.$transaction(async (tx) => {
        const [row] = await tx.$queryRaw<Pick<Outbox, 'companyId' | 'topic' | 'payload'>[]>`
          select "companyId", topic, payload from "Outbox" where id = ${id} and "doneAt" is null for update`;
        if (!row) return [];
        const kind = this.kinds.of(row.topic);
        const announcement = await kind.announce(tx, {
          companyId: row.companyId,
          now: this.clock.now(),
          ids: row.payload as Record<string, unknown>,
        });
        const deliveries = announcement
          ? await this.announcer.announce(tx, row.companyId, kind, announcement)
          : [];
        await tx.outbox.update({ where: { id }, data: { doneAt: this.clock.now(), error: null } });
        return deliveries;
      });
    } catch (error) {
      await this.database.outbox.updateMany({
        where: { id, doneAt: null },
        data: {
          attempts: { increment: 1 },
          error: error instanceof Error ? error.message : String(error),
        },
      });
      throw error;
    }
  }
}
