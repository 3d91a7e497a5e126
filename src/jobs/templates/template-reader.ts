import { Injectable } from '@nestjs/common';
import type { Template } from '../../generated/prisma/client.js';
import type { Context } from '../../platform/context.js';
import { Database } from '../../platform/database/database.js';
import { batchedOne } from '../../platform/graphql/batched.js';
import { isRowId } from '../../platform/row-id.js';
import { BUILT_IN_ID, builtInTemplate } from './built-in-template.js';

/** Reads templates; single ones are batched within the request. */
@Injectable()
export class TemplateReader {
  constructor(private readonly database: Database) {}

  /** The templates of the company by name; the built-in one when it has none. */
  async list(ctx: Context): Promise<Template[]> {
    const rows = await this.database.template.findMany({
      where: { companyId: ctx.companyId },
      orderBy: { name: 'asc' },
    });
    return rows.length > 0 ? rows : [builtInTemplate(ctx.companyId)];
  }

  /** One template of the company; null when there is none. */
  async byId(ctx: Context, id: string): Promise<Template | null> {
    if (id === BUILT_IN_ID) return (await this.list(ctx)).find((template) => template.id === id) ?? null;
    if (!isRowId(id)) return null;
    return batchedOne<Template>(ctx, 'template', async (ids) => {
      const rows = await this.database.template.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }
}
