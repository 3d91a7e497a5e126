import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock/clock.js';
import type { Transaction } from '../platform/database/database.js';
import { log } from '../platform/log.js';
import { Mailer, NO_MAIL_SERVER } from './mailer.js';
import { notBefore } from './not-before.js';
import type { Announcement, NoticeKind } from './notice-kind.js';
import { toStored } from './stored-notice.js';

/** The channel that notices go out by. */
export const EMAIL = 'email';

/** Writes a notice and claims one delivery per recipient and channel. Sending them is another's work. */
@Injectable()
export class Announcer {
  constructor(
    private readonly clock: Clock,
    private readonly mailer: Mailer,
  ) {}

  /** @returns ids of the claimed deliveries that may be sent now; none when the happening was announced before. */
  async announce(
    tx: Transaction,
    companyId: string,
    { kind, urgent }: NoticeKind,
    announcement: Announcement,
  ): Promise<string[]> {
    const now = this.clock.now();
    const { sourceKey, jobId, subjectType, subjectId, recipientIds, usefulUntil } = announcement;
    const [notice] = await tx.notice.createManyAndReturn({
      data: [
        {
          companyId,
          jobId,
          kind,
          sourceKey,
          subjectType,
          subjectId,
          detail: toStored(announcement),
          createdAt: now,
        },
      ],
      skipDuplicates: true,
    });
    if (!notice) return [];
    if (recipientIds.length === 0)
      log('warn', 'A notice has nobody to go to', { kind, companyId, sourceKey });
    const recipients = await tx.person.findMany({ where: { id: { in: [...recipientIds] } } });
    const deliveries = await tx.delivery.createManyAndReturn({
      data: recipients.map((recipient) => ({
        companyId,
        noticeId: notice.id,
        recipientId: recipient.id,
        channel: EMAIL,
        claimedAt: now,
        notBefore: notBefore(recipient, now, { urgent, usefulUntil }),
        error: this.mailer.isSet ? null : NO_MAIL_SERVER,
      })),
      skipDuplicates: true,
    });
    return deliveries.filter((delivery) => delivery.notBefore === null).map(({ id }) => id);
  }
}
