import { Args, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { Crew, CrewReader } from '../../crews/crews.face.js';
import { Job, JobReader, Phase, PhaseReader } from '../../jobs/jobs.face.js';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { WhatIfInput } from './what-if.inputs.js';
import { SupposedJob, SupposedPhase, WhatIfOutcome } from './what-if.model.js';
import { WhatIfService } from './what-if.service.js';

@Resolver(() => SupposedJob)
export class SupposedJobResolver {
  constructor(
    private readonly service: WhatIfService,
    private readonly jobs: JobReader,
  ) {}

  @Query(() => WhatIfOutcome, {
    description:
      'What would be if something changed: the difference it makes to every job. Nothing is written.',
  })
  @Allow('office')
  whatIf(@Ctx() ctx: Context, @Args('input', { description: 'What to suppose.' }) input: WhatIfInput) {
    return this.service.suppose(ctx, input);
  }

  @ResolveField(() => Job, { nullable: true, description: 'The job.' })
  job(@Ctx() ctx: Context, @Parent() supposed: SupposedJob) {
    return this.jobs.byId(ctx, supposed.jobId);
  }
}

@Resolver(() => SupposedPhase)
export class SupposedPhaseResolver {
  constructor(
    private readonly phases: PhaseReader,
    private readonly crews: CrewReader,
  ) {}

  @ResolveField(() => Phase, { nullable: true, description: 'The phase.' })
  phase(@Ctx() ctx: Context, @Parent() supposed: SupposedPhase) {
    return this.phases.byId(ctx, supposed.phaseId);
  }

  @ResolveField(() => Crew, { nullable: true, description: 'Crew in the plan in force.' })
  crewBefore(@Ctx() ctx: Context, @Parent() supposed: SupposedPhase) {
    return this.crews.byId(ctx, supposed.crewBeforeId);
  }

  @ResolveField(() => Crew, {
    nullable: true,
    description: 'Crew as supposed; null for a wait and for the extra crew.',
  })
  crewAfter(@Ctx() ctx: Context, @Parent() supposed: SupposedPhase) {
    return this.crews.byId(ctx, supposed.crewAfterId);
  }
}
