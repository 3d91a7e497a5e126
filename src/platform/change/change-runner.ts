import { Injectable } from '@nestjs/common';
import type { Prisma } from '../../generated/prisma/client.js';
import { Clock } from '../clock/clock.js';
import type { Context } from '../context.js';
import { Database, type Transaction } from '../database/database.js';
import { faultPoint } from '../faults/fault-point.js';
import { sendHint } from '../hints/send-hint.js';
import { KeyReused } from '../outcomes/key-reused.js';
import { type Refusal, Refused } from '../outcomes/refusal.js';
import { Change } from './change.js';
import { ChangeSteps } from './change-steps.js';
import { fingerprint } from './fingerprint.js';
import { refusalIn, storedRefusal } from './stored-refusal.js';

/** How far the clock of a phone may run ahead, in milliseconds (common practice, no source). */
const CLOCK_AHEAD = 5 * 60 * 1000;

/** The change a client asks for: its name, its input and the client's key for it. */
export interface ChangeRequest {
  readonly operation: string;
  readonly input: { readonly clientKey: string; readonly fromOutbox?: boolean | null };
}

/** What a success answers with: plain JSON that names the rows it touched; field resolvers load the rest. */
export type Done = Prisma.InputJsonObject;

/**
 * Runs every change of the service: one transaction under the company's lock, with the client key, the journal, the
 * outbox and the steps that follow (re-plan, reminders, hints) committed together.
 */
@Injectable()
export class ChangeRunner {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly steps: ChangeSteps,
  ) {}

  /**
   * @param work does the change; it returns what was done or throws `Refused`, which rolls everything back.
   * @returns what was done, or the refusal. A repeated client key gives the first answer without a second effect.
   */
  async run<T extends Done>(
    ctx: Context,
    request: ChangeRequest,
    work: (change: Change) => Promise<T>,
  ): Promise<T | Refusal> {
    try {
      const answer = await this.database.$transaction(async (tx) => {
        await enter(tx, ctx.companyId);
        const earlier = await this.earlierAnswer(tx, ctx, request);
        if (earlier) return earlier as T;
        const change = new Change(ctx, tx, this.clock.now(), request.input.fromOutbox ? CLOCK_AHEAD : 0);
        const done = await work(change);
        await this.finish(change);
        await tx.idempotencyKey.update({ where: keyOf(ctx, request), data: { answer: done } });
        await faultPoint('before-commit');
        return done;
      });
      await faultPoint('after-commit');
      // What this request has read before the change is stale now.
      ctx.batches.clear();
      return answer;
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      return request.input.fromOutbox ? this.keepRefusal(ctx, request, error.refusal) : error.refusal;
    }
  }

  /** Stores a refusal under its key; of two answers to one key the one that was stored first stands. */
  private keepRefusal<T extends Done>(
    ctx: Context,
    request: ChangeRequest,
    refusal: Refusal,
  ): Promise<T | Refusal> {
    return this.database.$transaction(async (tx) => {
      await enter(tx, ctx.companyId);
      const data = { ...this.keyRow(ctx, request), answer: storedRefusal(refusal) };
      const made = await tx.idempotencyKey.createMany({ data: [data], skipDuplicates: true });
      if (made.count === 1) return refusal;
      const earlier = await tx.idempotencyKey.findUniqueOrThrow({ where: keyOf(ctx, request) });
      if (earlier.fingerprint !== data.fingerprint) return new KeyReused();
      return refusalIn(earlier.answer) ?? (earlier.answer as T);
    });
  }

  /** A change that no client asked for (worker, seed): the same transaction and steps, without a client key. */
  async runInternal<T>(ctx: Context, work: (change: Change) => Promise<T>): Promise<T> {
    return this.database.$transaction(async (tx) => {
      await enter(tx, ctx.companyId);
      const change = new Change(ctx, tx, this.clock.now());
      const result = await work(change);
      await this.finish(change);
      return result;
    });
  }

  /**
   * Lets the steps look at a company because time has passed: waits run out, plans start later, reminders move. It is
   * journalled only when a step did something.
   */
  async passTime(ctx: Context): Promise<void> {
    await this.database.$transaction(async (tx) => {
      await enter(tx, ctx.companyId);
      const change = new Change(ctx, tx, this.clock.now());
      await this.steps.run(change);
      await this.write(change);
    });
  }

  private async finish(change: Change): Promise<void> {
    if (change.lines.length === 0) return;
    await this.steps.run(change);
    await this.write(change);
  }

  /** Writes the journal and tells everyone. */
  private async write(change: Change): Promise<void> {
    if (change.lines.length === 0) return;
    const entries = await change.tx.journalEntry.createManyAndReturn({
      select: { id: true },
      data: change.lines.map((line) => ({
        companyId: change.ctx.companyId,
        at: change.now,
        personId: change.ctx.personId || null,
        jobId: line.jobId ?? null,
        action: line.action,
        subjectType: line.subjectType,
        subjectId: line.subjectId,
        detail: { ...line.detail, ...byLink(change.ctx) },
        reason: line.reason ?? null,
      })),
    });
    await sendHint(change.tx, {
      companyId: change.ctx.companyId,
      changeNumber: entries.reduce((most, entry) => (entry.id > most ? entry.id : most), 0n).toString(),
      jobIds: [...new Set(change.lines.flatMap((line) => line.jobId ?? []))].sort(),
    });
  }

  private async earlierAnswer(tx: Transaction, ctx: Context, request: ChangeRequest): Promise<Done | null> {
    const row = this.keyRow(ctx, request);
    const made = await tx.idempotencyKey.createMany({ data: [row], skipDuplicates: true });
    if (made.count === 1) return null;
    const earlier = await tx.idempotencyKey.findUniqueOrThrow({ where: keyOf(ctx, request) });
    if (earlier.fingerprint !== row.fingerprint) throw new Refused(new KeyReused());
    const refusal = refusalIn(earlier.answer);
    if (refusal) throw new Refused(refusal);
    return earlier.answer as Done;
  }

  private keyRow(ctx: Context, { operation, input }: ChangeRequest) {
    const { companyId } = ctx;
    const { clientKey, fromOutbox: _, ...rest } = input;
    return {
      companyId,
      personId: keeperOf(ctx),
      key: clientKey,
      operation,
      fingerprint: fingerprint({ operation, input: rest }),
      createdAt: this.clock.now(),
    };
  }
}

function keyOf(ctx: Context, request: ChangeRequest) {
  return {
    companyId_personId_key: {
      companyId: ctx.companyId,
      personId: keeperOf(ctx),
      key: request.input.clientKey,
    },
  };
}

/** Whose keys these are: the person's, or those of the signed link, which may be in the hands of nobody we know. */
const keeperOf = (ctx: Context): string => ctx.link?.id ?? ctx.personId;

/** What the journal says of who acted, where a signed link did. */
const byLink = ({ link, name }: Context) => (link ? { byLink: name } : {});

/** Names the company to the database and waits for its turn: the changes of one company run one after the other. */
async function enter(tx: Transaction, companyId: string): Promise<void> {
  await tx.$queryRaw`select set_config('app.company', ${companyId}, true), pg_advisory_xact_lock(hashtextextended(${companyId}, 0))::text`;
}
