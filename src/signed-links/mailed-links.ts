import { Injectable } from '@nestjs/common';
import type { LinkPurpose, Person } from '../generated/prisma/client.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { linkPath } from './link-address.js';
import { hashToken, makeToken } from './opaque-token.js';
import { PURPOSES } from './purposes.js';

const DAY_MS = 24 * 60 * 60 * 1000;

/** A link that a message is about to carry. */
export interface MailedLink {
  readonly path: string;
  /** Removes it again when the message was refused, for nobody has it. */
  readonly forget: () => Promise<void>;
}

/**
 * Makes links for messages on their way out. A link is there before its message leaves: were the service to end right
 * after the mail server's answer, the message that went out would still open its page, and so would its repetition.
 */
@Injectable()
export class MailedLinks {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async make(jobId: string, purpose: LinkPurpose, person: Person): Promise<MailedLink> {
    const token = makeToken();
    const now = this.clock.now();
    const { id } = await this.database.signedLink.create({
      data: {
        companyId: person.companyId,
        jobId,
        purpose,
        recipient: person.name,
        personId: person.id,
        tokenHash: hashToken(token),
        createdAt: now,
        expiresAt: new Date(now.getTime() + PURPOSES[purpose].days * DAY_MS),
      },
    });
    return {
      path: linkPath(token),
      forget: async () => void (await this.database.signedLink.delete({ where: { id } })),
    };
  }
}
