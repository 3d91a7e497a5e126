import type { Actor } from '../platform/context.js';
import type { LinkRow } from './link-standing.js';
import { PURPOSES } from './purposes.js';

/** The holder of a link as the services see them: one job, and what its purpose reaches. */
export function holderOf({ id, companyId, jobId, personId, recipient, purpose }: LinkRow): Actor {
  const { role, reach } = PURPOSES[purpose];
  return { companyId, personId: personId ?? '', role, name: recipient, link: { id, purpose, jobId, reach } };
}
