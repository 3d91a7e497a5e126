import { Injectable } from '@nestjs/common';
import type { Reminder, ReminderState } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { type Connection, type PageArgs, pageOf } from '../platform/graphql/page.js';
import { rowAfter } from '../platform/graphql/row-after.js';
import { isRowId } from '../platform/row-id.js';

/** Reads reminders. */
@Injectable()
export class RemindersService {
  constructor(private readonly database: Database) {}

  /** A page of the reminders in the order they were first wanted. */
  page(
    ctx: Context,
    args: PageArgs,
    { jobId, state }: { jobId: string | null; state: ReminderState | null },
  ): Promise<Connection<Reminder>> {
    return pageOf(args, ({ take, after }) =>
      jobId !== null && !isRowId(jobId)
        ? Promise.resolve([])
        : this.database.reminder.findMany({
            where: {
              companyId: ctx.companyId,
              ...(jobId ? { jobId } : {}),
              ...(state ? { state } : {}),
              ...rowAfter(after),
            },
            orderBy: { id: 'asc' },
            take,
          }),
    );
  }
}
