import type { Change } from '../platform/change/change.js';
import { NotFound } from '../platform/outcomes/not-found.js';
import { Refused } from '../platform/outcomes/refusal.js';
import { rowIds } from '../platform/row-id.js';

/** Replaces the people of a crew. @throws Refused with NotFound when one is not of the company. */
export async function setMembers(
  { ctx, tx }: Change,
  crewId: string,
  personIds: readonly string[],
): Promise<void> {
  const { companyId } = ctx;
  const wanted = [...new Set(personIds)];
  const known = await tx.person.count({ where: { companyId, id: { in: rowIds(wanted) } } });
  if (known !== wanted.length) throw new Refused(new NotFound('person'));
  await tx.crewMember.deleteMany({ where: { companyId, crewId } });
  await tx.crewMember.createMany({ data: wanted.map((personId) => ({ companyId, crewId, personId })) });
}
