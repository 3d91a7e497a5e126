import { Injectable } from '@nestjs/common';
import type { Crew, Job, Phase } from '../generated/prisma/client.js';
import { Clock } from '../platform/clock/clock.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { rowIds } from '../platform/row-id.js';
import { boardRange } from './board-range.js';
import { newestChange } from './newest-change.js';
import { doneBy, touching } from './touching.js';

/** What the board is asked for. */
export interface BoardQuery {
  readonly from: Date;
  readonly to: Date;
  readonly jobIds?: readonly string[] | null | undefined;
  readonly crewIds?: readonly string[] | null | undefined;
}

/** The board's rows, read by a fixed number of queries whatever is on it. */
export interface BoardRows {
  readonly from: Date;
  readonly to: Date;
  readonly now: Date;
  readonly planNumber: number;
  readonly changeNumber: string;
  readonly jobs: readonly Job[];
  readonly phases: readonly Phase[];
  readonly crews: readonly Crew[];
}

/** Reads the schedule board. */
@Injectable()
export class BoardService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /**
   * Everything on the board for a stretch. The rows are of one moment, so the change number is theirs: a client that
   * asks for the changes since that number misses none.
   *
   * @throws CodedError when the stretch is empty or longer than 400 days.
   */
  async board(ctx: Context, query: BoardQuery): Promise<BoardRows> {
    const range = boardRange(query.from, query.to);
    const { companyId } = ctx;
    const jobIds = query.jobIds ? rowIds(query.jobIds) : null;
    const crewIds = query.crewIds ? rowIds(query.crewIds) : null;
    return this.database.$transaction(
      async (tx) => {
        const company = await tx.company.findUniqueOrThrow({ where: { id: companyId } });
        const changeNumber = await newestChange(tx, companyId);
        const phases = await tx.phase.findMany({
          where: {
            companyId,
            state: { not: 'dropped' },
            job: jobIds ? { id: { in: jobIds } } : { state: { not: 'cancelled' } },
            AND: [touching(range), ...(crewIds ? [doneBy(crewIds)] : [])],
          },
          orderBy: [{ jobId: 'asc' }, { position: 'asc' }, { id: 'asc' }],
        });
        const shown = [...new Set(phases.map(({ jobId }) => jobId))];
        const jobs = await tx.job.findMany({
          where: {
            companyId,
            ...(jobIds
              ? { id: { in: jobIds } }
              : { OR: [{ state: { in: ['entered', 'running'] } }, { id: { in: shown } }] }),
          },
          orderBy: [{ priority: 'asc' }, { number: 'asc' }],
        });
        const crews = await tx.crew.findMany({
          where: { companyId, ...(crewIds ? { id: { in: crewIds } } : { active: true }) },
          orderBy: { name: 'asc' },
        });
        return {
          ...range,
          now: this.clock.now(),
          planNumber: company.planNumber,
          changeNumber,
          jobs,
          phases,
          crews,
        };
      },
      { isolationLevel: 'RepeatableRead' },
    );
  }
}
