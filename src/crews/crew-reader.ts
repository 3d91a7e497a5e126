import { Injectable } from '@nestjs/common';
import type { Crew, CrewException, Person } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { isRowId } from '../platform/row-id.js';

/** Reads crews; single ones are batched within the request. */
@Injectable()
export class CrewReader {
  constructor(private readonly database: Database) {}

  /** The crews of the company by name, those out of use too. */
  list(ctx: Context): Promise<Crew[]> {
    return this.database.crew.findMany({ where: { companyId: ctx.companyId }, orderBy: { name: 'asc' } });
  }

  /** One crew of the company; null when there is none. */
  async byId(ctx: Context, id: string | null): Promise<Crew | null> {
    if (id === null || !isRowId(id)) return null;
    return batchedOne<Crew>(ctx, 'crew', async (ids) => {
      const rows = await this.database.crew.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }

  /** The days on which a crew's hours differ, in order. */
  exceptions(ctx: Context, crewId: string): Promise<CrewException[]> {
    return batchedMany<CrewException>(ctx, 'crew exceptions', async (ids) => {
      const rows = await this.database.crewException.findMany({
        where: { companyId: ctx.companyId, crewId: { in: [...ids] } },
        orderBy: { day: 'asc' },
      });
      return rows.map((row) => [row.crewId, row] as const);
    }).load(crewId);
  }

  /** The people of a crew by name. */
  members(ctx: Context, crewId: string): Promise<Person[]> {
    return batchedMany<Person>(ctx, 'crew members', async (ids) => {
      const rows = await this.database.crewMember.findMany({
        where: { companyId: ctx.companyId, crewId: { in: [...ids] } },
        include: { person: true },
        orderBy: { person: { name: 'asc' } },
      });
      return rows.map((row) => [row.crewId, row.person] as const);
    }).load(crewId);
  }

  /** Ids of the crews a person works in. */
  async idsOfPerson(ctx: Context, personId: string): Promise<string[]> {
    const rows = await this.database.crewMember.findMany({
      where: { companyId: ctx.companyId, personId },
      select: { crewId: true },
      orderBy: { crewId: 'asc' },
    });
    return rows.map((row) => row.crewId);
  }
}
