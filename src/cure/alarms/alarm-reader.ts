import { Injectable } from '@nestjs/common';
import type { CureAlarm } from '../../generated/prisma/client.js';
import type { Context } from '../../platform/context.js';
import { Database } from '../../platform/database/database.js';
import { batchedMany } from '../../platform/graphql/batched.js';
import { ALARM_KINDS } from './alarm-kinds.js';

/** Reads the alarms of placements, batched within the request. */
@Injectable()
export class AlarmReader {
  constructor(private readonly database: Database) {}

  /** The alarms of a placement, the most urgent first, of one kind the newest first. */
  ofPlacement(ctx: Context, placementId: string, standingOnly: boolean): Promise<CureAlarm[]> {
    const name = standingOnly ? 'standing alarms of placement' : 'alarms of placement';
    return batchedMany<CureAlarm>(ctx, name, async (ids) => {
      const rows = await this.database.cureAlarm.findMany({
        where: {
          companyId: ctx.companyId,
          placementId: { in: [...ids] },
          ...(standingOnly ? { clearedAt: null } : {}),
        },
        orderBy: [{ openedAt: 'desc' }, { id: 'desc' }],
      });
      return rows.sort((a, b) => urgency(a) - urgency(b)).map((row) => [row.placementId, row] as const);
    }).load(placementId);
  }
}

const KINDS: readonly string[] = ALARM_KINDS;
const urgency = ({ kind }: CureAlarm): number => KINDS.indexOf(kind);
