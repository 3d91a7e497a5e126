import { Injectable } from '@nestjs/common';
import type { Commitment, PlannedPhase, Proposal, ProposalState } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedMany, batchedOne } from '../platform/graphql/batched.js';
import { type Connection, type PageArgs, pageOf } from '../platform/graphql/page.js';
import { rowAfter } from '../platform/graphql/row-after.js';
import { isRowId } from '../platform/row-id.js';
import { readReason, type StoredReason } from './reasons/stored-reason.js';
import { readConflicts, type StoredConflicts } from './replan/stored-conflict.js';

/** The reasons of everything a company has planned, by phase id. */
export type ReasonsByPhase = ReadonlyMap<string, StoredReason>;

/** Reads the plan, the promises and the proposals; everything asked for by id is batched within the request. */
@Injectable()
export class PlanReader {
  constructor(private readonly database: Database) {}

  /** Where the plan has a phase; null when it has no place. */
  planned(ctx: Context, phaseId: string): Promise<PlannedPhase | null> {
    return batchedOne<PlannedPhase>(ctx, 'planned phase', async (ids) => {
      const rows = await this.database.plannedPhase.findMany({
        where: { companyId: ctx.companyId, phaseId: { in: [...ids] } },
      });
      return rows.map((row) => [row.phaseId, row] as const);
    }).load(phaseId);
  }

  /** The reasons of all that is planned, and of what has no place, read once in a request. */
  async reasons(ctx: Context): Promise<ReasonsByPhase> {
    const all = await batchedOne<ReasonsByPhase>(ctx, 'reasons of the plan', async ([companyId = '']) => {
      const rows = await this.database.plannedPhase.findMany({
        where: { companyId },
        select: { phaseId: true, reason: true },
      });
      const { unplanned } = await this.conflicts(ctx);
      const found = rows.map(({ phaseId, reason }) => [phaseId, readReason(reason)] as const);
      return [[companyId, new Map([...found, ...Object.entries(unplanned)])]];
    }).load(ctx.companyId);
    return all ?? new Map();
  }

  /** The conflicts of the plan in force. */
  async conflicts(ctx: Context): Promise<StoredConflicts> {
    const stored = await batchedOne<StoredConflicts>(
      ctx,
      'conflicts of the plan',
      async ([companyId = '']) => {
        const row = await this.database.plan.findFirst({
          where: { companyId },
          orderBy: { number: 'desc' },
          select: { conflicts: true },
        });
        return [[companyId, readConflicts(row?.conflicts)]];
      },
    ).load(ctx.companyId);
    return stored ?? readConflicts(undefined);
  }

  /** The promise that stands for a phase, else the one it was finished under; null when there is none. */
  commitmentOf(ctx: Context, phaseId: string): Promise<Commitment | null> {
    return batchedOne<Commitment>(ctx, 'commitment of phase', async (ids) => {
      const rows = await this.database.commitment.findMany({
        where: { companyId: ctx.companyId, phaseId: { in: [...ids] }, state: { in: ['held', 'kept'] } },
        orderBy: [{ state: 'desc' }, { madeAt: 'asc' }, { id: 'asc' }],
      });
      return rows.map((row) => [row.phaseId, row] as const);
    }).load(phaseId);
  }

  /** Those of the commitments that exist, in the order asked for. */
  async commitmentsById(ctx: Context, ids: readonly string[]): Promise<Commitment[]> {
    const loader = batchedOne<Commitment>(ctx, 'commitment', async (wanted) => {
      const rows = await this.database.commitment.findMany({
        where: { companyId: ctx.companyId, id: { in: wanted.filter(isRowId) } },
      });
      return rows.map((row) => [row.id, row] as const);
    });
    const found = await Promise.all(ids.map((id) => loader.load(id)));
    return found.filter((row) => row !== null);
  }

  /** When the plan has the last phase of a job finished; null when none has a place. */
  plannedFinish(ctx: Context, jobId: string): Promise<Date | null> {
    return batchedMany<Date>(ctx, 'planned finishes of job', async (ids) => {
      const rows = await this.database.plannedPhase.findMany({
        where: { companyId: ctx.companyId, phase: { jobId: { in: [...ids] } } },
        select: { finishAt: true, phase: { select: { jobId: true } } },
      });
      return rows.map(({ finishAt, phase }) => [phase.jobId, finishAt] as const);
    })
      .load(jobId)
      .then(lastOf);
  }

  /** The last promised finish of a job; null when nothing was promised. */
  committedFinish(ctx: Context, jobId: string): Promise<Date | null> {
    return batchedMany<Date>(ctx, 'committed finishes of job', async (ids) => {
      const rows = await this.database.commitment.findMany({
        where: {
          companyId: ctx.companyId,
          state: { in: ['held', 'kept'] },
          phase: { jobId: { in: [...ids] } },
        },
        select: { finishAt: true, phase: { select: { jobId: true } } },
      });
      return rows.map(({ finishAt, phase }) => [phase.jobId, finishAt] as const);
    })
      .load(jobId)
      .then(lastOf);
  }

  /** A page of the proposals in the order they were opened. */
  proposals(ctx: Context, args: PageArgs, state: ProposalState | null): Promise<Connection<Proposal>> {
    return pageOf(args, ({ take, after }) =>
      this.database.proposal.findMany({
        where: { companyId: ctx.companyId, ...(state ? { state } : {}), ...rowAfter(after) },
        orderBy: { id: 'asc' },
        take,
      }),
    );
  }

  /** One proposal of the company; null when there is none. */
  async proposalById(ctx: Context, id: string): Promise<Proposal | null> {
    if (!isRowId(id)) return null;
    return this.database.proposal.findFirst({ where: { companyId: ctx.companyId, id } });
  }

  /** Whether the plan in force is still the one that followed the acceptance of a proposal. */
  async undoable({ companyId }: Context, { state, acceptedPlan, former }: Proposal): Promise<boolean> {
    if (state !== 'accepted' || former === null) return false;
    const { planNumber } = await this.database.company.findUniqueOrThrow({ where: { id: companyId } });
    return planNumber === acceptedPlan;
  }
}

const lastOf = (dates: readonly Date[]): Date | null =>
  dates.reduce<Date | null>((last, date) => (last === null || date > last ? date : last), null);
