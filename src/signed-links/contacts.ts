import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';

/** Whom the holder of a link can ask. */
export interface Contact {
  readonly companyName: string;
  readonly askName: string | null;
  readonly askEmail: string | null;
}

/** Finds whom to ask about a link: whoever made it, else the office. Nobody on site is named. */
@Injectable()
export class Contacts {
  constructor(private readonly database: Database) {}

  async of({
    companyId,
    createdById,
  }: {
    readonly companyId: string;
    readonly createdById: string | null;
  }): Promise<Contact> {
    const company = await this.database.company.findUniqueOrThrow({ where: { id: companyId } });
    const office = await this.database.person.findMany({
      where: { companyId, role: 'office', active: true },
      orderBy: { id: 'asc' },
    });
    const ask = office.find(({ id }) => id === createdById) ?? office[0] ?? null;
    return { companyName: company.name, askName: ask?.name ?? null, askEmail: ask?.email ?? null };
  }
}
