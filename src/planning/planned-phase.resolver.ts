import { GraphQLISODateTime, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import { Crew, CrewReader } from '../crews/crews.face.js';
import type { PlannedPhase as PlannedRow } from '../generated/prisma/client.js';
import { Job, Phase } from '../jobs/jobs.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { PlanReader } from './plan-reader.js';
import { PlannedPhase, Segment } from './planned-phase.model.js';
import { Reason } from './reason.model.js';
import { readReason } from './reasons/stored-reason.js';
import { ReasonReader } from './reasons/reason-reader.js';

@Resolver(() => PlannedPhase)
export class PlannedPhaseResolver {
  constructor(
    private readonly reasonReader: ReasonReader,
    private readonly crews: CrewReader,
  ) {}

  @ResolveField(() => Crew, { nullable: true, description: 'Who does it; null for a wait.' })
  crew(@Ctx() ctx: Context, @Parent() planned: PlannedRow) {
    return this.crews.byId(ctx, planned.crewId);
  }

  @ResolveField(() => [Segment], { description: 'The stretches in which it runs, in order.' })
  segments(@Parent() planned: PlannedRow): Segment[] {
    const stored = planned.segments as [number, number][];
    return stored.map(([from, to]) => ({ from: new Date(from), to: new Date(to) }));
  }

  @ResolveField(() => Reason, { description: 'The one constraint that binds its start.' })
  reason(@Ctx() ctx: Context, @Parent() planned: PlannedRow): Promise<Reason> {
    const {
      steps: [step = { kind: 'now' }],
      ties,
    } = readReason(planned.reason);
    return this.reasonReader.reason(ctx, planned.phaseId, step, ties);
  }

  @ResolveField(() => [Reason], {
    description: 'The reasons from here back to today, the binding one first.',
  })
  reasons(@Ctx() ctx: Context, @Parent() planned: PlannedRow): Promise<Reason[]> {
    return this.reasonReader.chain(ctx, planned.phaseId);
  }
}

@Resolver(() => Phase)
export class PhasePlanResolver {
  constructor(private readonly plan: PlanReader) {}

  @ResolveField(() => PlannedPhase, {
    nullable: true,
    description: 'Where the plan in force has it; null when it has no place.',
  })
  planned(@Ctx() ctx: Context, @Parent() phase: Phase) {
    return this.plan.planned(ctx, phase.id);
  }
}

@Resolver(() => Job)
export class JobPlanResolver {
  constructor(private readonly plan: PlanReader) {}

  @ResolveField(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When the plan has its last phase finished.',
  })
  plannedFinish(@Ctx() ctx: Context, @Parent() job: Job) {
    return this.plan.plannedFinish(ctx, job.id);
  }

  @ResolveField(() => GraphQLISODateTime, {
    nullable: true,
    description: 'The last promised finish of its phases.',
  })
  committedFinish(@Ctx() ctx: Context, @Parent() job: Job) {
    return this.plan.committedFinish(ctx, job.id);
  }
}
