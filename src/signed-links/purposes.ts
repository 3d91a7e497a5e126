import type { LinkPurpose, Role } from '../generated/prisma/client.js';
import { HOOKUP_REACH } from './reach/hookup-reach.js';
import { OWNER_WEEK_REACH } from './reach/owner-week-reach.js';

/** What a purpose of a signed link means. */
export interface Purpose {
  /** What its page is called. */
  readonly page: string;
  /** Path of its pages; the id of the link follows. */
  readonly path: string;
  /** Days that a link of it lasts, unless the office says otherwise. */
  readonly days: number;
  /** As whom its holder acts. */
  readonly role: Role;
  readonly reach: ReadonlySet<string>;
}

/** Longest and shortest life of a link, in days. */
export const MOST_DAYS = 365;

/** In how many browsers one link may be open: an office, a phone, and one to spare. */
export const MOST_BROWSERS = 3;

/** Most questions of one browser by a link in a minute; a page asks a handful, and for each of its pictures. */
export const MOST_ASKS_A_MINUTE = 300;

/**
 * Every purpose. The days are common practice, no source: a hookup is booked and made within weeks, a house is lived in
 * for the length of a job and the cure after it.
 */
export const PURPOSES: Readonly<Record<LinkPurpose, Purpose>> = {
  hookup: { page: 'hookup sheet', path: '/sheet', days: 60, role: 'electrician', reach: HOOKUP_REACH },
  ownerWeek: {
    page: 'week at your entry',
    path: '/week',
    days: 120,
    role: 'viewer',
    reach: OWNER_WEEK_REACH,
  },
};
