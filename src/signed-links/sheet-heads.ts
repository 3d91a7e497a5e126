import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock/clock.js';
import type { Context, LinkScope } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { CodedError } from '../platform/graphql/coded-error.js';
import type { LinkPurpose } from '../generated/prisma/client.js';
import { Contacts } from './contacts.js';
import type { SheetHead } from './sheet-head.model.js';

/** Gives the pages of signed links their heads. */
@Injectable()
export class SheetHeads {
  constructor(
    private readonly database: Database,
    private readonly contacts: Contacts,
    private readonly clock: Clock,
  ) {}

  async of({ companyId, name }: Context, { id, jobId }: LinkScope): Promise<SheetHead> {
    const link = await this.database.signedLink.findUniqueOrThrow({ where: { id } });
    const job = await this.database.job.findFirstOrThrow({
      where: { id: jobId, companyId },
      include: { site: true },
    });
    const { address, town, zone } = job.site;
    return {
      recipient: name,
      ...(await this.contacts.of(link)),
      jobNumber: job.number,
      jobName: job.name,
      jobState: job.state,
      address,
      town,
      zone,
      expiresAt: link.expiresAt,
      now: this.clock.now(),
    };
  }
}

/** The link that asks. @throws CodedError when somebody signed in asks for a page that only a link opens. */
export function demandLink({ link }: Context, purpose: LinkPurpose): LinkScope {
  if (link?.purpose === purpose) return link;
  throw new CodedError(
    'not-allowed',
    'This page is opened by a signed link; make one on the page of the job.',
  );
}
