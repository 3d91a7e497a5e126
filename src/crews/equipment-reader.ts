import { Injectable } from '@nestjs/common';
import type { EquipmentPool } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedOne } from '../platform/graphql/batched.js';

/** Reads the company's equipment; single pools are batched within the request. */
@Injectable()
export class EquipmentReader {
  constructor(private readonly database: Database) {}

  /** All pools of the company by kind. */
  list(ctx: Context): Promise<EquipmentPool[]> {
    return this.database.equipmentPool.findMany({
      where: { companyId: ctx.companyId },
      orderBy: { kind: 'asc' },
    });
  }

  /** One pool of the company; null when there is none. */
  byId(ctx: Context, id: string): Promise<EquipmentPool | null> {
    return batchedOne<EquipmentPool>(ctx, 'equipment pool', async (ids) => {
      const rows = await this.database.equipmentPool.findMany({
        where: { companyId: ctx.companyId, id: { in: [...ids] } },
      });
      return rows.map((row) => [row.id, row] as const);
    }).load(id);
  }
}
