import { hashPassword } from '../../src/people/passwords.js';
import type { Company, Person, Role } from '../../src/generated/prisma/client.js';
import type { Database } from '../../src/platform/database/database.js';

/** Password of every person that tests make. */
export const TEST_PASSWORD = 'granite under gravel';

let hashed: Promise<string> | undefined;
let counter = 0;

/** A company with one person of each role. */
export interface TestCompany {
  readonly company: Company;
  readonly people: Record<Role, Person>;
}

/** Makes a company with people straight in the database; everything else is made through the API. */
export async function makeCompany(database: Database, name = 'Larkspur Entries'): Promise<TestCompany> {
  hashed ??= hashPassword(TEST_PASSWORD);
  const passwordHash = await hashed;
  counter += 1;
  const company = await database.company.create({ data: { name, zone: 'America/New_York' } });
  const roles: Role[] = ['office', 'foreman', 'crew', 'electrician', 'viewer'];
  const made = await Promise.all(
    roles.map((role) =>
      database.person.create({
        data: {
          companyId: company.id,
          email: `${role}.${counter}@example.test`,
          name: `${role} ${counter}`,
          role,
          passwordHash,
          zone: 'America/New_York',
        },
      }),
    ),
  );
  return {
    company,
    people: Object.fromEntries(made.map((person) => [person.role, person])) as Record<Role, Person>,
  };
}
