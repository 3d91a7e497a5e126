import { Args, ID, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { Crew, CrewReader, EquipmentPool, EquipmentReader } from '../../crews/crews.face.js';
import { Inspection, InspectionReader } from '../../inspections/inspections.face.js';
import { Clearance, JobReader, Phase, PhaseReader } from '../../jobs/jobs.face.js';
import type { Context } from '../../platform/context.js';
import { Ctx } from '../../platform/graphql/request-context.js';
import { Reason } from '../reason.model.js';
import { ReasonReader } from './reason-reader.js';

@Resolver(() => Reason)
export class ReasonResolver {
  constructor(
    private readonly reasons: ReasonReader,
    private readonly phases: PhaseReader,
    private readonly jobs: JobReader,
    private readonly crews: CrewReader,
    private readonly equipment: EquipmentReader,
    private readonly inspections: InspectionReader,
  ) {}

  @Query(() => [Reason], {
    description:
      'Why a phase sits where it sits, chained back to today; empty for a phase the plan does not know.',
  })
  explain(
    @Ctx() ctx: Context,
    @Args('phaseId', { type: () => ID, description: 'The phase.' }) phaseId: string,
  ) {
    return this.reasons.chain(ctx, phaseId);
  }

  @ResolveField(() => Phase, { nullable: true, description: 'The phase it refers to.' })
  phase(@Ctx() ctx: Context, @Parent() reason: Reason) {
    return this.phases.byId(ctx, reason.phaseId);
  }

  @ResolveField(() => Inspection, { nullable: true, description: 'The inspection it refers to.' })
  inspection(@Ctx() ctx: Context, @Parent() reason: Reason) {
    return this.inspections.byId(ctx, reason.inspectionId);
  }

  @ResolveField(() => Clearance, { nullable: true, description: 'The clearance it refers to.' })
  clearance(@Ctx() ctx: Context, @Parent() reason: Reason) {
    return this.jobs.clearanceById(ctx, reason.clearanceId);
  }

  @ResolveField(() => Crew, { nullable: true, description: 'The crew it refers to.' })
  crew(@Ctx() ctx: Context, @Parent() reason: Reason) {
    return this.crews.byId(ctx, reason.crewId);
  }

  @ResolveField(() => EquipmentPool, { nullable: true, description: 'The equipment it refers to.' })
  pool(@Ctx() ctx: Context, @Parent() reason: Reason) {
    return reason.poolId && this.equipment.byId(ctx, reason.poolId);
  }
}
