import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import { Crew, CrewReader } from '../../crews/crews.face.js';
import { Job, JobReader, Phase, PhaseReader } from '../../jobs/jobs.face.js';
import type { Context } from '../../platform/context.js';
import { Ctx } from '../../platform/graphql/request-context.js';
import { Reason } from '../reason.model.js';
import { ReasonReader } from '../reasons/reason-reader.js';
import type { StoredDifference } from '../replan/stored-differences.js';
import { Difference, JobEnd, JobFinish, PlanMove } from './proposal.model.js';

@Resolver(() => Difference)
export class DifferenceResolver {
  constructor(
    private readonly phases: PhaseReader,
    private readonly crews: CrewReader,
    private readonly reasons: ReasonReader,
  ) {}

  @ResolveField(() => Phase, { nullable: true, description: 'The phase that moves.' })
  phase(@Ctx() ctx: Context, @Parent() difference: Difference) {
    return this.phases.byId(ctx, difference.phaseId);
  }

  @ResolveField(() => Crew, { nullable: true, description: 'Crew as committed.' })
  crewBefore(@Ctx() ctx: Context, @Parent() difference: Difference) {
    return this.crews.byId(ctx, difference.crewBeforeId);
  }

  @ResolveField(() => Crew, { nullable: true, description: 'Crew as planned.' })
  crewAfter(@Ctx() ctx: Context, @Parent() difference: Difference) {
    return this.crews.byId(ctx, difference.crewAfterId);
  }

  @ResolveField(() => Reason, { nullable: true, description: 'What binds it where the plan now has it.' })
  reason(@Ctx() ctx: Context, @Parent() difference: Difference & Pick<StoredDifference, 'reason'>) {
    return difference.reason && this.reasons.reason(ctx, difference.phaseId, difference.reason);
  }
}

@Resolver(() => JobFinish)
export class JobFinishResolver {
  constructor(private readonly jobs: JobReader) {}

  @ResolveField(() => Job, { nullable: true, description: 'The job whose end moves.' })
  job(@Ctx() ctx: Context, @Parent() finish: JobFinish) {
    return this.jobs.byId(ctx, finish.jobId);
  }
}

@Resolver(() => PlanMove)
export class PlanMoveResolver {
  constructor(
    private readonly phases: PhaseReader,
    private readonly crews: CrewReader,
    private readonly reasons: ReasonReader,
  ) {}

  @ResolveField(() => Phase, { nullable: true, description: 'The phase that moves.' })
  phase(@Ctx() ctx: Context, @Parent() move: PlanMove) {
    return this.phases.byId(ctx, move.phaseId);
  }

  @ResolveField(() => Crew, { nullable: true, description: 'Crew in the plan in force.' })
  crewBefore(@Ctx() ctx: Context, @Parent() move: PlanMove) {
    return this.crews.byId(ctx, move.crewBeforeId);
  }

  @ResolveField(() => Crew, { nullable: true, description: 'Crew as offered.' })
  crewAfter(@Ctx() ctx: Context, @Parent() move: PlanMove) {
    return this.crews.byId(ctx, move.crewAfterId);
  }

  @ResolveField(() => Reason, { nullable: true, description: 'What binds it where the offered plan has it.' })
  reason(@Ctx() ctx: Context, @Parent() move: PlanMove & Pick<StoredDifference, 'reason'>) {
    return move.reason && this.reasons.reason(ctx, move.phaseId, move.reason);
  }
}

@Resolver(() => JobEnd)
export class JobEndResolver {
  constructor(private readonly jobs: JobReader) {}

  @ResolveField(() => Job, { nullable: true, description: 'The job whose end moves.' })
  job(@Ctx() ctx: Context, @Parent() end: JobEnd) {
    return this.jobs.byId(ctx, end.jobId);
  }
}
