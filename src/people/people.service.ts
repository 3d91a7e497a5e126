import { Injectable } from '@nestjs/common';
import type { Company, Person } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedOne } from '../platform/graphql/batched.js';

/** The people of a company. */
@Injectable()
export class PeopleService {
  constructor(private readonly database: Database) {}

  me(ctx: Context): Promise<Person> {
    return this.byPersonId(ctx.personId);
  }

  /** A person just signed in, of whichever company. */
  byPersonId(id: string): Promise<Person> {
    return this.database.person.findUniqueOrThrow({ where: { id } });
  }

  company(ctx: Context): Promise<Company> {
    return this.database.company.findUniqueOrThrow({ where: { id: ctx.companyId } });
  }

  list(ctx: Context): Promise<Person[]> {
    return this.database.person.findMany({
      where: { companyId: ctx.companyId, active: true },
      orderBy: { name: 'asc' },
    });
  }

  /** One person of the company, batched within the request; null when there is none. */
  byId(ctx: Context, id: string): Promise<Person | null> {
    return batchedOne<Person>(ctx, 'person', async (ids) => {
      const rows = await this.database.person.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** Whether the database holds the demo, whose people may sign in by one button. */
  async demoPeople(): Promise<Person[]> {
    const demo = await this.database.company.findFirst({ where: { isDemo: true } });
    return demo
      ? this.database.person.findMany({
          where: { companyId: demo.id, active: true },
          orderBy: { name: 'asc' },
        })
      : [];
  }
}
