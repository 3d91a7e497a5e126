import { Injectable } from '@nestjs/common';
import type { LinkSession } from '../generated/prisma/client.js';
import { Clock } from '../platform/clock/clock.js';
import type { Actor } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { CodedError } from '../platform/graphql/coded-error.js';
import { LinkAuthenticator } from '../platform/graphql/link-authenticator.js';
import { holderOf } from './holder.js';
import { linkCookie } from './link-cookie.js';
import { LinkReader } from './link-reader.js';
import { standingOf } from './link-standing.js';
import { hashToken } from './opaque-token.js';
import { MOST_ASKS_A_MINUTE } from './purposes.js';

const MINUTE_MS = 60_000;

const CLOSED =
  'This page is not open in this browser any more: its link has run out or was taken back. Open the link you were sent once more; if that does not help, ask whoever sent it for a new one.';

/** Browsers in which links are open. Every question looks at the link itself, so one that is taken back ends at once. */
@Injectable()
export class LinkSessions extends LinkAuthenticator {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly reader: LinkReader,
  ) {
    super();
  }

  /** The session of a link in the browser that sends this Cookie header; null when there is none. */
  async of(linkId: string, cookieHeader: string | undefined): Promise<LinkSession | null> {
    const token = linkCookie(cookieHeader, linkId);
    if (!token) return null;
    const session = await this.database.linkSession.findUnique({ where: { tokenHash: hashToken(token) } });
    return session?.linkId === linkId ? session : null;
  }

  override async holderOf(linkId: string, cookieHeader: string | undefined): Promise<Actor | CodedError> {
    const session = await this.of(linkId, cookieHeader);
    const link = session && (await this.reader.held(linkId));
    const now = this.clock.now();
    if (!link || standingOf(link, now) !== 'live') return new CodedError('not-signed-in', CLOSED);
    return (await this.count(session.id, now)) > MOST_ASKS_A_MINUTE
      ? new CodedError('too-many', 'This page asks too often. Close it in other windows and wait a minute.')
      : holderOf(link);
  }

  /** Counts a question, in one statement so that questions at the same time are all counted. */
  private async count(sessionId: string, now: Date): Promise<number> {
    const begin = new Date(now.getTime() - MINUTE_MS);
    const [row] = await this.database.$queryRaw<{ asks: number }[]>`
      update "LinkSession" set
        "lastSeenAt" = ${now},
        "minuteAsks" = case when "minuteFrom" > ${begin} then "minuteAsks" + 1 else 1 end,
        "minuteFrom" = case when "minuteFrom" > ${begin} then "minuteFrom" else ${now} end
      where id = ${sessionId}::uuid returning "minuteAsks" as asks`;
    return row?.asks ?? 0;
  }
}
