import { Injectable } from '@nestjs/common';
import type { Phase } from '../generated/prisma/client.js';
import { Clock } from '../platform/clock/clock.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { batchedOne } from '../platform/graphql/batched.js';
import { gatherFacts } from './facts/gather-facts.js';
import type { FoundObstacle } from './obstacles/obstacle.js';
import { findObstacles } from './obstacles/obstacles.js';

/** Finds what stands in the way of phases now, for all phases of a request at once. */
@Injectable()
export class ObstacleReader {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** What would refuse a start now, or a finish once started; nothing for a phase that is over. */
  async of(ctx: Context, phase: Phase): Promise<FoundObstacle[]> {
    if (phase.state !== 'waiting' && phase.state !== 'started') return [];
    const found = await batchedOne<FoundObstacle[]>(ctx, 'obstacles', async (phaseIds) => {
      const at = this.clock.now();
      const all = await gatherFacts(this.database, { companyId: ctx.companyId, phaseIds, at });
      return [...all].map(([id, facts]) => {
        const gate = facts.phase.state === 'waiting' ? 'start' : 'finish';
        return [id, findObstacles(facts, { gate, at })] as const;
      });
    }).load(phase.id);
    return found ?? [];
  }
}
