import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { HoldPoint as HoldPointRow } from '../generated/prisma/client.js';
import { Clearance, Job, JobReader, Phase, PhaseReader } from '../jobs/jobs.face.js';
import { PeopleService, Person } from '../people/people.face.js';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { Finding } from './finding.model.js';
import { RefuseHoldPointInput, ReleaseHoldPointInput, WaiveHoldPointInput } from './hold-point.inputs.js';
import { HoldPoint } from './hold-point.model.js';
import {
  HoldPointChanged,
  RefuseHoldPointOutcome,
  ReleaseHoldPointOutcome,
  WaiveHoldPointOutcome,
} from './hold-point.outcomes.js';
import { HoldPointItem, MeasuredValue } from './hold-point-item.model.js';
import { HoldPointReader } from './hold-point-reader.js';
import { HoldPointsService } from './hold-points.service.js';
import { Inspection } from './inspection.model.js';
import { InspectionReader } from './inspection-reader.js';
import { itemModel, itemsOf } from './stored-items.js';

const INPUT = { description: 'What is decided.' };

@Resolver(() => HoldPoint)
export class HoldPointResolver {
  constructor(
    private readonly reader: HoldPointReader,
    private readonly holdPoints: HoldPointsService,
    private readonly inspections: InspectionReader,
    private readonly jobs: JobReader,
    private readonly phases: PhaseReader,
    private readonly people: PeopleService,
  ) {}

  @Query(() => HoldPoint, {
    nullable: true,
    description: 'One hold point; null when there is none of that id.',
  })
  holdPoint(
    @Ctx() ctx: Context,
    @Args('id', { type: () => ID, description: 'Id of the hold point.' }) id: string,
  ) {
    return this.reader.byId(ctx, id);
  }

  @ResolveField(() => Phase, { description: 'The phase it gates.' })
  phase(@Ctx() ctx: Context, @Parent() point: HoldPointRow) {
    return this.phases.byId(ctx, point.phaseId);
  }

  @ResolveField(() => Job, { description: 'The job it belongs to.' })
  job(@Ctx() ctx: Context, @Parent() point: HoldPointRow) {
    return this.jobs.byId(ctx, point.jobId);
  }

  @ResolveField(() => [HoldPointItem], { description: 'What to measure or confirm.' })
  items(@Parent() point: HoldPointRow): HoldPointItem[] {
    return itemsOf(point).map(itemModel);
  }

  @ResolveField(() => [MeasuredValue], { description: 'What was measured at the last decision.' })
  measured(@Parent() point: HoldPointRow): MeasuredValue[] {
    return (point.measured ?? []) as unknown as MeasuredValue[];
  }

  @ResolveField(() => [Finding], { description: 'What the limits said about what was measured.' })
  findings(@Parent() point: HoldPointRow): Finding[] {
    return (point.findings ?? []) as unknown as Finding[];
  }

  @ResolveField(() => Inspection, { nullable: true, description: 'The visit that releases it.' })
  inspection(@Ctx() ctx: Context, @Parent() point: HoldPointRow) {
    return this.inspections.byId(ctx, point.inspectionId);
  }

  @ResolveField(() => Clearance, { nullable: true, description: 'The clearance that releases it.' })
  clearance(@Ctx() ctx: Context, @Parent() point: HoldPointRow) {
    return this.jobs.clearanceById(ctx, point.clearanceId);
  }

  @ResolveField(() => Person, { nullable: true, description: 'Who decided it.' })
  decidedBy(@Ctx() ctx: Context, @Parent() point: HoldPointRow) {
    return point.decidedById ? this.people.byId(ctx, point.decidedById) : null;
  }

  @Mutation(() => ReleaseHoldPointOutcome, {
    description: 'Releases a hold point on measured values within all limits.',
  })
  @Allow('office', 'foreman')
  releaseHoldPoint(@Ctx() ctx: Context, @Args('input', INPUT) input: ReleaseHoldPointInput) {
    return this.holdPoints.release(ctx, input);
  }

  @Mutation(() => RefuseHoldPointOutcome, { description: 'Refuses a hold point with what is wrong.' })
  @Allow('office', 'foreman')
  refuseHoldPoint(@Ctx() ctx: Context, @Args('input', INPUT) input: RefuseHoldPointInput) {
    return this.holdPoints.refuse(ctx, input);
  }

  @Mutation(() => WaiveHoldPointOutcome, {
    description:
      'Waives a hold point with a reason: the office, or for a cure also the foreman; never an inspection or a reading.',
  })
  @Allow('office', 'foreman')
  waiveHoldPoint(@Ctx() ctx: Context, @Args('input', INPUT) input: WaiveHoldPointInput) {
    return this.holdPoints.waive(ctx, input);
  }
}

@Resolver(() => HoldPointChanged)
export class HoldPointChangedResolver {
  constructor(private readonly reader: HoldPointReader) {}

  @ResolveField(() => HoldPoint, { description: 'The hold point as it now stands.' })
  holdPoint(@Ctx() ctx: Context, @Parent() { holdPointId }: HoldPointChanged) {
    return this.reader.byId(ctx, holdPointId);
  }
}
