import type { Prisma } from '../../generated/prisma/client.js';
import type { Context } from '../context.js';
import type { Transaction } from '../database/database.js';

/** One line of the journal. */
export interface JournalLine {
  /** What was done, in plain words of the trade: "phase started", "inspection failed". */
  readonly action: string;
  readonly subjectType: string;
  readonly subjectId: string;
  readonly jobId?: string | null;
  readonly detail?: Prisma.InputJsonObject;
  readonly reason?: string | null;
}

/**
 * One change in its transaction. A service writes rows through `tx`, tells what it did with `record`, and asks for
 * later work with `later`; all of it commits together or not at all.
 */
export class Change {
  readonly lines: JournalLine[] = [];

  constructor(
    readonly ctx: Context,
    readonly tx: Transaction,
    /** The moment of the change; the same for everything it writes. */
    readonly now: Date,
    /** Milliseconds by which a time told from outside may lie ahead of `now` and still count as now. */
    readonly clockAhead = 0,
  ) {}

  /** Adds a line to the journal. Every change of rows records at least one. */
  record(line: JournalLine): void {
    this.lines.push(line);
  }

  /** Adds an outbox row: the relay hands it to the queue when it is due. The payload holds ids only. */
  async later(topic: string, payload: Prisma.InputJsonObject, dueAt: Date = this.now): Promise<void> {
    await this.tx.outbox.create({
      data: { companyId: this.ctx.companyId, topic, payload, createdAt: this.now, dueAt },
    });
  }
}
