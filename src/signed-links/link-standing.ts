import type { Job, Person, SignedLink } from '../generated/prisma/client.js';

/** How a link stands at a moment. */
export type LinkStanding = 'live' | 'expired' | 'revoked';

/** A link with what its standing depends on. */
export interface LinkRow extends SignedLink {
  readonly job: Pick<Job, 'state'>;
  /** Whom it was mailed to; null for somebody without an account. */
  readonly person: Pick<Person, 'active'> | null;
}

/**
 * Whether a link opens anything now. It ends by itself on its day, at once when it is taken back, and with the account of
 * the person it was mailed to.
 */
export function standingOf(
  link: Pick<LinkRow, 'revokedAt' | 'expiresAt' | 'person'>,
  now: Date,
): LinkStanding {
  if (link.revokedAt || link.person?.active === false) return 'revoked';
  return link.expiresAt > now ? 'live' : 'expired';
}
