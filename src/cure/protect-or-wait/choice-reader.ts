import { Injectable } from '@nestjs/common';
import type { ProtectionChoice } from '../../generated/prisma/client.js';
import type { Context } from '../../platform/context.js';
import { Database } from '../../platform/database/database.js';
import { batchedOne } from '../../platform/graphql/batched.js';

/** Reads what was chosen for phases, batched within the request. */
@Injectable()
export class ChoiceReader {
  constructor(private readonly database: Database) {}

  /** The choice for a phase; null when nothing was chosen. */
  ofPhase(ctx: Context, phaseId: string): Promise<ProtectionChoice | null> {
    return batchedOne<ProtectionChoice>(ctx, 'protection choice of phase', async (ids) => {
      const rows = await this.database.protectionChoice.findMany({
        where: { companyId: ctx.companyId, phaseId: { in: [...ids] } },
      });
      return rows.map((row) => [row.phaseId, row] as const);
    }).load(phaseId);
  }
}
