import { Inject, Injectable } from '@nestjs/common';
import type { Delivery, Notice, Person } from '../generated/prisma/client.js';
import { Clock } from '../platform/clock/clock.js';
import { CONFIG, type Config } from '../platform/config/config.js';
import { Database, type Transaction } from '../platform/database/database.js';
import { faultPoint } from '../platform/faults/fault-point.js';
import { MOST_ATTEMPTS } from '../platform/queue/retry-delay.js';
import { type MailedLink, MailedLinks } from '../signed-links/signed-links.face.js';
import { isFinalRefusal, Mailer, NO_MAIL_SERVER, wasRefused } from './mailer.js';
import { messageIdOf, threadOf } from './message-id.js';
import { notBefore } from './not-before.js';
import { NoticeKinds } from './notice-kinds.js';
import { renderHtml } from './render-html.js';
import { renderText } from './render-text.js';
import type { Message } from './message.js';
import { storedOf } from './stored-notice.js';

const SENDING_MILLISECONDS = 90_000;

type DeliveryRow = Delivery & { notice: Notice; recipient: Person };

/** What the row is to hold after an attempt. */
type Result = Partial<Pick<Delivery, 'state' | 'attempts' | 'sentAt' | 'notBefore' | 'providerId' | 'error'>>;

/**
 * Sends one claimed delivery and records what came of it. The row is locked meanwhile, so no two processes send it at
 * once; only a crash between the server's answer and its record can send it twice.
 */
@Injectable()
export class DeliverySender {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly kinds: NoticeKinds,
    private readonly mailer: Mailer,
    private readonly links: MailedLinks,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** @throws Error when the delivery is to be tried again. */
  async send(id: string): Promise<void> {
    const again = await this.database.$transaction(
      async (tx) => {
        const row = await lockClaimed(tx, id);
        if (!row) return null;
        const result = await this.attempt(tx, row);
        await tx.delivery.update({ where: { id }, data: result });
        const retry = result.state === undefined && (result.attempts ?? 0) > row.attempts;
        return retry ? (result.error ?? 'not sent') : null;
      },
      { timeout: SENDING_MILLISECONDS },
    );
    if (again !== null) throw new Error(again);
  }

  private async attempt(tx: Transaction, row: DeliveryRow): Promise<Result> {
    const { notice, recipient } = row;
    const now = this.clock.now();
    const kind = this.kinds.of(notice.kind);
    const { message, usefulUntil: useful } = storedOf(notice);
    const usefulUntil = useful === null ? null : new Date(useful);
    const overtaken =
      (recipient.active ? null : 'not sent: the person is no longer active') ??
      (usefulUntil && usefulUntil < now ? 'not sent: too late to be of use' : null) ??
      (await kind.overtaken?.(tx, { notice, delivery: row, now })) ??
      null;
    if (overtaken) return { state: 'failed', error: overtaken };
    const quiet = notBefore(recipient, now, { urgent: kind.urgent, usefulUntil });
    if (quiet) return { notBefore: quiet };
    if (!this.mailer.isSet) return { error: NO_MAIL_SERVER };
    const attempts = row.attempts + 1;
    const link = await this.signedLink(row, message);
    const sent = link ? { ...message, link: { ...message.link, path: link.path } } : message;
    try {
      const { origin } = this.config;
      const providerId = await this.mailer.send({
        messageId: messageIdOf(row.id, origin),
        date: now,
        thread: notice.jobId && threadOf(notice.jobId, origin),
        to: { name: recipient.name, address: recipient.email },
        subject: message.subject,
        text: renderText(sent, recipient.zone, origin),
        html: renderHtml(sent, recipient.zone, origin),
      });
      await faultPoint('after-provider-answered');
      return { state: 'sent', attempts, sentAt: this.clock.now(), providerId, error: null, notBefore: null };
    } catch (error) {
      // Where no answer came, the message may be with its recipient all the same.
      if (wasRefused(error)) await link?.forget();
      const failed = isFinalRefusal(error) || attempts >= MOST_ATTEMPTS;
      return {
        ...(failed ? { state: 'failed' as const } : {}),
        attempts,
        error: error instanceof Error ? error.message : String(error),
      };
    }
  }

  /** The link that this message carries for an electrician, who needs no account to use it; null for anybody else. */
  private async signedLink(
    { notice, recipient }: DeliveryRow,
    { link }: Message,
  ): Promise<MailedLink | null> {
    if (!link.signed || !notice.jobId || recipient.role !== 'electrician') return null;
    return this.links.make(notice.jobId, link.signed, recipient);
  }
}

/** The delivery with its notice and recipient, locked; null when it is at work elsewhere or no longer to be sent. */
async function lockClaimed(tx: Transaction, id: string): Promise<DeliveryRow | null> {
  const locked = await tx.$queryRaw<{ id: string }[]>`
    select id from "Delivery" where id = ${id}::uuid and state = 'claimed' for update skip locked`;
  if (locked.length === 0) return null;
  return tx.delivery.findUnique({ where: { id }, include: { notice: true, recipient: true } });
}
