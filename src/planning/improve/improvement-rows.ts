import { Injectable } from '@nestjs/common';
import type { Improvement, ImprovementStop, Prisma } from '../../generated/prisma/client.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import { sendHint } from '../../platform/hints/send-hint.js';
import type { StoredProgress } from './stored-outcome.js';

/** A worker that has said nothing for so long is taken for dead. */
const DEAD_AFTER_MILLISECONDS = 30_000;

/** So many workers may begin one search; when all of them died at it, the search is the cause. */
const MOST_ATTEMPTS = 3;

/** What a search says on its way. */
export interface Said {
  readonly schedules: number;
  readonly progress: StoredProgress;
}

/** The rows of searches, as workers take, keep and leave them. */
@Injectable()
export class ImprovementRows {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** Takes a search that waits, or whose worker is dead; null when it is somebody's, or has ended. One of several workers gets it. */
  async claim(id: string, workerId: string): Promise<Improvement | null> {
    const now = this.clock.now();
    const dead = new Date(now.getTime() - DEAD_AFTER_MILLISECONDS);
    const free: Prisma.ImprovementWhereInput = {
      id,
      OR: [{ state: 'waiting' }, { state: 'running', aliveAt: { lt: dead } }],
    };
    await this.end(
      { ...free, attempts: { gte: MOST_ATTEMPTS } },
      `Its worker died ${MOST_ATTEMPTS} times. Look into the logs of the workers before you start another.`,
    );
    const [run] = await this.database.improvement.updateManyAndReturn({
      where: free,
      data: { state: 'running', workerId, aliveAt: now, startedAt: now, attempts: { increment: 1 } },
    });
    return run ?? null;
  }

  /** Says that the search is alive and how far it is. @returns how it is to stop, null to go on; `lost` when it is no longer this worker's. */
  async beat(
    { id, companyId }: Improvement,
    workerId: string,
    said: Said | null,
  ): Promise<ImprovementStop | null | 'lost'> {
    const [row] = await this.database.improvement.updateManyAndReturn({
      where: { id, workerId, state: 'running' },
      data: {
        aliveAt: this.clock.now(),
        ...(said && {
          schedules: said.schedules,
          progress: said.progress as unknown as Prisma.InputJsonObject,
        }),
      },
      select: { stop: true },
    });
    if (!row) return 'lost';
    if (said) await sendHint(this.database, { companyId, changeNumber: '0', jobIds: [], improvementId: id });
    return row.stop;
  }

  /** Puts a search back for another worker. */
  async handBack(id: string, workerId: string): Promise<void> {
    await this.database.improvement.updateMany({
      where: { id, workerId, state: 'running' },
      data: { state: 'waiting', queuedAt: null, workerId: null, attempts: { decrement: 1 } },
    });
  }

  /** Ends a search that this worker could not do. */
  async fail(id: string, workerId: string, message: string): Promise<void> {
    await this.end({ id, workerId, state: 'running' }, message);
  }

  private async end(where: Prisma.ImprovementWhereInput, message: string): Promise<void> {
    const ended = await this.database.improvement.updateManyAndReturn({
      where,
      data: { state: 'failed', message, endedAt: this.clock.now(), revision: { increment: 1 } },
      select: { id: true, companyId: true },
    });
    for (const { id, companyId } of ended)
      await sendHint(this.database, { companyId, changeNumber: '0', jobIds: [], improvementId: id });
  }
}
