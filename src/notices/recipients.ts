import type { Role } from '../generated/prisma/client.js';
import type { Transaction } from '../platform/database/database.js';

/** Active people of a company with one of the roles, by id. */
export async function peopleOf(
  tx: Transaction,
  companyId: string,
  ...roles: readonly Role[]
): Promise<string[]> {
  const people = await tx.person.findMany({
    where: { companyId, role: { in: [...roles] }, active: true },
    select: { id: true },
    orderBy: { id: 'asc' },
  });
  return people.map(({ id }) => id);
}

/** The foremen in a crew; all foremen of the company when the crew has none, or when there is no crew. */
export async function foremenOf(
  tx: Transaction,
  companyId: string,
  crewId: string | null,
): Promise<string[]> {
  const members = crewId
    ? await tx.crewMember.findMany({
        where: { companyId, crewId, person: { role: 'foreman', active: true } },
        select: { personId: true },
        orderBy: { personId: 'asc' },
      })
    : [];
  return members.length > 0 ? members.map(({ personId }) => personId) : peopleOf(tx, companyId, 'foreman');
}

/** The active people in crews, whatever their role, and the foremen of each crew; see `foremenOf` for crews without. */
export async function crewPeopleOf(
  tx: Transaction,
  companyId: string,
  crewIds: readonly (string | null)[],
): Promise<string[]> {
  const known = crewIds.flatMap((id) => id ?? []);
  const members = await tx.crewMember.findMany({
    where: { companyId, crewId: { in: known }, person: { active: true } },
    select: { personId: true },
    orderBy: { personId: 'asc' },
  });
  const foremen: string[] = [];
  for (const id of new Set(crewIds)) foremen.push(...(await foremenOf(tx, companyId, id)));
  return [...new Set([...members.map(({ personId }) => personId), ...foremen])];
}

/** The electrician of a hookup when one is set and active, else all electricians of the company. */
export async function electriciansOf(
  tx: Transaction,
  companyId: string,
  electricianId: string | null,
): Promise<string[]> {
  const set = electricianId
    ? await tx.person.findFirst({
        where: { id: electricianId, companyId, active: true },
        select: { id: true },
      })
    : null;
  return set ? [set.id] : peopleOf(tx, companyId, 'electrician');
}
