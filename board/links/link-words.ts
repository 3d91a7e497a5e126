import type { JobLinksQuery, LinkPurpose } from '../api/documents.js';
import { dayWords, isoWords } from '../time/moment-words.js';

type Link = NonNullable<JobLinksQuery['jobByNumber']>['signedLinks'][number];

/** What a link opens, in a few words. */
export const PURPOSE_WORDS: Readonly<Record<LinkPurpose, string>> = {
  hookup: 'hookup sheet',
  ownerWeek: "owner's week",
};

/** Whether a link opens anything, and until when. */
export function stateWords({ state, expiresAt, revokedAt }: Link, zone: string): string {
  if (state === 'revoked') return revokedAt ? `taken back ${isoWords(revokedAt, zone)}` : 'account closed';
  const day = dayWords(Date.parse(expiresAt), zone);
  return state === 'live' ? `open until ${day}` : `ran out ${day}`;
}

/** Where and when it was opened, and whether somebody was turned away. */
export function openedWords({ browsers, lastOpenedAt, refusedOpenings }: Link, zone: string): string {
  const opened = lastOpenedAt
    ? `${isoWords(lastOpenedAt, zone)}, in ${browsers} ${browsers === 1 ? 'browser' : 'browsers'}`
    : 'never';
  const refused = refusedOpenings > 0 ? `; ${refusedOpenings} refused` : '';
  return opened + refused;
}
