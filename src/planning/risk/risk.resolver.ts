import { Args, Int, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { Job, JobReader, Phase, PhaseReader } from '../../jobs/jobs.face.js';
import type { Context } from '../../platform/context.js';
import { Ctx } from '../../platform/graphql/request-context.js';
import { JobRisk, PhaseRisk, PlanRisk } from './risk.model.js';
import { RiskService } from './risk.service.js';

const SAMPLES = {
  type: () => Int,
  nullable: true,
  defaultValue: 200,
  description: 'How many plans to draw, taken between 20 and 1000.',
};
const SEED = {
  type: () => Int,
  nullable: true,
  defaultValue: 1,
  description: 'Equal seeds give equal figures.',
};

@Resolver(() => JobRisk)
export class JobRiskResolver {
  constructor(
    private readonly jobs: JobReader,
    private readonly service: RiskService,
  ) {}

  @Query(() => PlanRisk, { description: 'How sure the dates of the plan are; nothing is written.' })
  planRisk(
    @Ctx() ctx: Context,
    @Args('samples', SAMPLES) samples: number | null,
    @Args('seed', SEED) seed: number | null,
  ) {
    return this.service.ask(ctx, samples ?? 200, seed ?? 1);
  }

  @ResolveField(() => Job, { nullable: true, description: 'The job.' })
  job(@Ctx() ctx: Context, @Parent() risk: JobRisk) {
    return this.jobs.byId(ctx, risk.jobId);
  }
}

@Resolver(() => PhaseRisk)
export class PhaseRiskResolver {
  constructor(private readonly phases: PhaseReader) {}

  @ResolveField(() => Phase, { nullable: true, description: 'The phase.' })
  phase(@Ctx() ctx: Context, @Parent() risk: PhaseRisk) {
    return this.phases.byId(ctx, risk.phaseId);
  }
}
