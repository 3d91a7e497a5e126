import type { Authority } from '../generated/prisma/client.js';
import { localTime } from '../platform/local-time.js';
import { refuseInput } from '../platform/outcomes/demand-past.js';
import { Refused } from '../platform/outcomes/refusal.js';
import { NoticeTooShort } from './errors/notice-too-short.js';
import { OutsideVisitingHours } from './errors/outside-visiting-hours.js';
import { noticeOver, VisitingHours } from './visiting-hours.js';

/**
 * Checks a window against the authority's notice, visiting hours and length of a visit.
 *
 * @throws Refused with NoticeTooShort, OutsideVisitingHours or InvalidInput.
 */
export function demandVisitable(authority: Authority, requestedAt: Date, from: Date, to: Date): void {
  const least = authority.visitMinutes;
  if (to.getTime() - from.getTime() < least * 60_000)
    refuseInput('visitTo', `A visit of ${authority.name} takes ${least} minutes; book a longer window.`);
  const over = noticeOver(authority, requestedAt);
  if (from < over) {
    const earliest = new VisitingHours(authority, requestedAt).earliestVisit(requestedAt) ?? over;
    const message = `${authority.name} asks for ${authority.noticeHours} hours of notice: book from ${localTime(earliest, authority.zone)}.`;
    throw new Refused(new NoticeTooShort(earliest, message));
  }
  const hours = new VisitingHours(authority, from);
  if (hours.contains(from, to)) return;
  const next = hours.nextVisit(from);
  const when = next
    ? `the next visit can begin at ${localTime(next, authority.zone)}`
    : 'none is in sight for two months';
  throw new Refused(
    new OutsideVisitingHours(next, `${authority.name} does not visit in that window; ${when}.`),
  );
}
