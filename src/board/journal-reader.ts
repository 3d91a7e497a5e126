import { Injectable } from '@nestjs/common';
import type { JournalEntry } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { CodedError } from '../platform/graphql/coded-error.js';
import { type Connection, type PageArgs, pageOf } from '../platform/graphql/page.js';
import { rowIds } from '../platform/row-id.js';

/** Most entries that one question for changes is answered with. */
export const MOST_CHANGES = 500;

/** An entry as callers see it: its number as text. */
export type JournalRow = Omit<JournalEntry, 'id'> & { readonly id: string };

/** Reads the journal. */
@Injectable()
export class JournalReader {
  constructor(private readonly database: Database) {}

  /** A page of the journal, newest first. A job of another company has no entries, like a missing one. */
  async page(ctx: Context, args: PageArgs, jobId: string | null): Promise<Connection<JournalRow>> {
    const job = jobId === null ? {} : { jobId: { in: rowIds([jobId]) } };
    return pageOf(args, async ({ take, after }) => {
      const rows = await this.database.journalEntry.findMany({
        where: {
          companyId: ctx.companyId,
          ...job,
          ...(after === null ? {} : { id: { lt: number(after, 'after') } }),
        },
        orderBy: { id: 'desc' },
        take,
      });
      return rows.map(shown);
    });
  }

  /**
   * The company's entries after a number, oldest first, at most 500; whoever gets as many asks again from the last.
   *
   * @throws CodedError when the number is none.
   */
  async since(ctx: Context, changeNumber: string): Promise<JournalRow[]> {
    const rows = await this.database.journalEntry.findMany({
      where: { companyId: ctx.companyId, id: { gt: number(changeNumber, 'changeNumber') } },
      orderBy: { id: 'asc' },
      take: MOST_CHANGES,
    });
    return rows.map(shown);
  }
}

const shown = (row: JournalEntry): JournalRow => ({ ...row, id: String(row.id) });

function number(text: string, argument: string): bigint {
  if (!/^\d{1,18}$/.test(text))
    throw new CodedError(
      'bad-request',
      `${argument} must be the number of a change, as the board or a hint gives it.`,
    );
  return BigInt(text);
}
