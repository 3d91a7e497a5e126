import type { Prisma } from '../generated/prisma/client.js';
import type { LinkScope } from '../platform/context.js';

/** Kinds of work whose photos an electrician needs: where the leads run, and what was laid. */
const ELECTRICAL = ['penetrations', 'cable', 'cable-test', 'electrical-rough', 'hookup'] as const;

/**
 * Which photos of its job a link shows: the owner sees what the office released, the electrician what shows cable and
 * leads.
 */
export function shownByLink({
  jobId,
  purpose,
}: Pick<LinkScope, 'jobId' | 'purpose'>): Prisma.PhotoWhereInput {
  return purpose === 'ownerWeek'
    ? { jobId, releasedAt: { not: null } }
    : { jobId, phase: { kind: { in: [...ELECTRICAL] } } };
}
