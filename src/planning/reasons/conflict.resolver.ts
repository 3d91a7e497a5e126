import { Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { Board } from '../../board/board.face.js';
import { Job, JobReader, Phase, PhaseReader } from '../../jobs/jobs.face.js';
import type { Context } from '../../platform/context.js';
import { Ctx } from '../../platform/graphql/request-context.js';
import { PlanConflict } from '../plan-conflict.model.js';
import { ConflictReader } from './conflict-reader.js';

@Resolver(() => PlanConflict)
export class PlanConflictResolver {
  constructor(
    private readonly conflicts: ConflictReader,
    private readonly phases: PhaseReader,
    private readonly jobs: JobReader,
  ) {}

  @Query(() => [PlanConflict], { description: 'What the plan in force cannot give as asked.' })
  planConflicts(@Ctx() ctx: Context) {
    return this.conflicts.all(ctx);
  }

  @ResolveField(() => Phase, { nullable: true, description: 'The phase it is about.' })
  phase(@Ctx() ctx: Context, @Parent() conflict: PlanConflict) {
    return this.phases.byId(ctx, conflict.phaseId);
  }

  @ResolveField(() => Job, { nullable: true, description: 'The job it is about.' })
  job(@Ctx() ctx: Context, @Parent() conflict: PlanConflict) {
    return this.jobs.byId(ctx, conflict.jobId);
  }
}

@Resolver(() => Board)
export class BoardConflictsResolver {
  constructor(private readonly reader: ConflictReader) {}

  @ResolveField(() => [PlanConflict], { description: 'What the plan in force cannot give as asked.' })
  conflicts(@Ctx() ctx: Context) {
    return this.reader.all(ctx);
  }
}
