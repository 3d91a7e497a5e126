import { Injectable } from '@nestjs/common';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import { Clock } from '../../platform/clock/clock.js';
import { contextOf } from '../../platform/context.js';
import { holderOf } from '../holder.js';
import { LinkReader, linkWhere } from '../link-reader.js';
import { LinkSessions } from '../link-sessions.js';
import { type LinkRow, standingOf } from '../link-standing.js';
import { hashToken, makeToken } from '../opaque-token.js';
import { MOST_BROWSERS } from '../purposes.js';
import { Guesses } from './guesses.js';

/** Who knocks: the token, and what the request tells of the browser. */
export interface Knock {
  readonly token: string;
  readonly cookieHeader: string | undefined;
  /** What the browser calls itself. */
  readonly browser: string;
  /** Address of the network it comes from. */
  readonly address: string;
}

/** Why a link opens nothing. */
export type Shut = {
  readonly shut: 'unknown' | 'expired' | 'revoked' | 'guessing' | 'full';
  readonly link?: LinkRow;
};

/** What a look at a link finds: a way in, the page open in this browser already, or why not. */
export type Look = { readonly link: LinkRow; readonly open: boolean } | Shut;

/** A link just opened in this browser; the token goes into the cookie and nowhere else. */
export interface Opened {
  readonly link: LinkRow;
  /** Null when it was open in this browser before. */
  readonly token: string | null;
}

/** Opens signed links. Looking changes nothing, so that a mail scanner that follows a link uses nothing up. */
@Injectable()
export class LinkDoor {
  constructor(
    private readonly reader: LinkReader,
    private readonly sessions: LinkSessions,
    private readonly guesses: Guesses,
    private readonly changes: ChangeRunner,
    private readonly clock: Clock,
  ) {}

  async look({ token, cookieHeader, address }: Knock): Promise<Look> {
    if (await this.guesses.tooMany(address)) return { shut: 'guessing' };
    const link = await this.reader.byToken(token);
    if (!link) {
      await this.guesses.count(address);
      return { shut: 'unknown' };
    }
    const standing = standingOf(link, this.clock.now());
    if (standing !== 'live') return { shut: standing, link };
    return { link, open: (await this.sessions.of(link.id, cookieHeader)) !== null };
  }

  /** Opens the link in this browser, once, in so many browsers at most. */
  async open(knock: Knock, requestId: string): Promise<Opened | Shut> {
    const look = await this.look(knock);
    if ('shut' in look) return look;
    if (look.open) return { link: look.link, token: null };
    const ctx = contextOf(holderOf(look.link), requestId);
    return this.changes.runInternal(ctx, (change) => enter(change, look.link.id, shortened(knock.browser)));
  }
}

/** Inside the company's turn, so that browsers that knock at the same time are counted one after the other. */
async function enter(change: Change, linkId: string, browser: string): Promise<Opened | Shut> {
  const { tx, now } = change;
  const link = await linkWhere(tx, { id: linkId });
  if (!link) return { shut: 'unknown' };
  const standing = standingOf(link, now);
  if (standing !== 'live') return { shut: standing, link };
  const told = { subjectType: 'signedLink', subjectId: link.id, jobId: link.jobId };
  const detail = { purpose: link.purpose, recipient: link.recipient, browser };
  const sessions = await tx.linkSession.findMany({ where: { linkId }, orderBy: { id: 'asc' } });
  // A button that was pressed twice: the first answer was thrown away by the browser, and nothing was asked by it.
  const unused = sessions.find((one) => one.browser === browser && one.minuteAsks === 0);
  if (!unused && sessions.length >= MOST_BROWSERS) {
    await tx.signedLink.update({ where: { id: link.id }, data: { refusedOpenings: { increment: 1 } } });
    change.record({ action: 'signed link refused, open in too many browsers', ...told, detail });
    return { shut: 'full', link };
  }
  const token = makeToken();
  const tokenHash = hashToken(token);
  if (unused) await tx.linkSession.update({ where: { id: unused.id }, data: { tokenHash } });
  else {
    const times = { openedAt: now, lastSeenAt: now, minuteFrom: now };
    await tx.linkSession.create({
      data: { companyId: link.companyId, linkId, tokenHash, browser, ...times },
    });
    change.record({ action: 'signed link opened', ...told, detail });
  }
  return { link, token };
}

const shortened = (browser: string): string => browser.slice(0, 200) || 'a browser that gives no name';
