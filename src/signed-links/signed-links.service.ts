import { Inject, Injectable } from '@nestjs/common';
import { WrongState } from '../phases/phases.face.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import { CONFIG, type Config } from '../platform/config/config.js';
import type { Context } from '../platform/context.js';
import { companyRow } from '../platform/database/company-row.js';
import { demandFound, demandRevision } from '../platform/outcomes/demand.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { Refusal, Refused } from '../platform/outcomes/refusal.js';
import { linkPath } from './link-address.js';
import { hashToken, makeToken } from './opaque-token.js';
import { PURPOSES } from './purposes.js';
import {
  type MakeSignedLinkInput,
  makeLinkSchema,
  type RevokeSignedLinkInput,
} from './signed-links.inputs.js';
import type { SignedLinkChanged, SignedLinkMade } from './signed-links.outcomes.js';

const DAY_MS = 24 * 60 * 60 * 1000;

/** Makes signed links and takes them back. */
@Injectable()
export class SignedLinksService {
  constructor(
    private readonly changes: ChangeRunner,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** Makes a link. The stored answer, which a repetition gets, never holds the address. */
  async make(ctx: Context, input: MakeSignedLinkInput): Promise<SignedLinkMade | Refusal> {
    let address: string | null = null;
    const outcome = await this.changes.run(ctx, { operation: 'makeSignedLink', input }, async (change) => {
      const { recipient, days } = parseInput(makeLinkSchema, input);
      const job = demandFound(
        await change.tx.job.findFirst({ where: companyRow(change, input.jobId) }),
        'job',
      );
      if (job.state === 'cancelled')
        throw new Refused(
          new WrongState('cancelled', `Job ${job.number} is cancelled; nobody is sent a link to it.`),
        );
      const token = makeToken();
      const { purpose } = input;
      const life = (days ?? PURPOSES[purpose].days) * DAY_MS;
      const link = await change.tx.signedLink.create({
        data: {
          companyId: ctx.companyId,
          jobId: job.id,
          purpose,
          recipient,
          tokenHash: hashToken(token),
          createdAt: change.now,
          createdById: ctx.personId || null,
          expiresAt: new Date(change.now.getTime() + life),
        },
      });
      change.record({
        action: 'signed link made',
        subjectType: 'signedLink',
        subjectId: link.id,
        jobId: job.id,
        detail: { purpose, recipient, expiresAt: link.expiresAt.toISOString() },
      });
      address = new URL(linkPath(token), this.config.origin).href;
      return { signedLinkId: link.id };
    });
    return outcome instanceof Refusal ? outcome : { ...outcome, address };
  }

  /** Takes a link back: it opens nothing from then on, and the pages that are open are shut with their next question. */
  revoke(ctx: Context, input: RevokeSignedLinkInput): Promise<SignedLinkChanged | Refusal> {
    return this.changes.run(ctx, { operation: 'revokeSignedLink', input }, async (change) => {
      const link = demandFound(
        await change.tx.signedLink.findFirst({ where: companyRow(change, input.signedLinkId) }),
        'signed link',
      );
      demandRevision(link, input.revision, 'signed link');
      if (link.revokedAt)
        throw new Refused(
          new WrongState(
            'revoked',
            `The link of ${link.recipient} was taken back before; nothing is left to do.`,
          ),
        );
      await change.tx.signedLink.update({
        where: { id: link.id },
        data: { revokedAt: change.now, revokedById: ctx.personId || null, revision: { increment: 1 } },
      });
      change.record({
        action: 'signed link taken back',
        subjectType: 'signedLink',
        subjectId: link.id,
        jobId: link.jobId,
        detail: { purpose: link.purpose, recipient: link.recipient },
      });
      return { signedLinkId: link.id };
    });
  }
}
