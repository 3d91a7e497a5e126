import type { Crew } from '../generated/prisma/client.js';
import type { Change } from '../platform/change/change.js';
import { demandFound } from '../platform/outcomes/demand.js';
import { isRowId } from '../platform/row-id.js';

/** The crew inside a change. @throws Refused with NotFound when the company has none of that id. */
export async function demandCrew({ ctx, tx }: Change, id: string): Promise<Crew> {
  const crew = isRowId(id) ? await tx.crew.findFirst({ where: { companyId: ctx.companyId, id } }) : null;
  return demandFound(crew, 'crew');
}
