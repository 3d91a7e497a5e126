import { PrismaPg } from '@prisma/adapter-pg';
import { makeDemoCompany } from '../../../prisma/demo/company.js';
import { PrismaClient } from '../../../src/generated/prisma/client.js';
import { type FreshDatabase, freshDatabase } from '../../support/fresh-database.js';

/** The people of the demo in a database without anything else: there in a second, for a suite that enters its own jobs. */
export async function peopleDatabase(): Promise<FreshDatabase> {
  const fresh = await freshDatabase();
  const prisma = new PrismaClient({ adapter: new PrismaPg({ connectionString: fresh.url }) });
  try {
    await makeDemoCompany(prisma as never);
  } finally {
    await prisma.$disconnect();
  }
  return fresh;
}
