import {
  Args,
  GraphQLISODateTime,
  ID,
  Mutation,
  Parent,
  Query,
  ResolveField,
  Resolver,
} from '@nestjs/graphql';
import { InspectionState } from '../generated/prisma/enums.js';
import type { Inspection as InspectionRow } from '../generated/prisma/client.js';
import { Job, JobReader, Phase, PhaseReader } from '../jobs/jobs.face.js';
import type { Context } from '../platform/context.js';
import { PageArgs } from '../platform/graphql/page.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { Authority, SiteReader } from '../sites/sites.face.js';
import {
  BookInspectionInput,
  FailInspectionInput,
  PassInspectionInput,
  RequestInspectionInput,
} from './inspection.inputs.js';
import { Inspection, InspectionConnection, PlannedVisit } from './inspection.model.js';
import {
  BookInspectionOutcome,
  FailInspectionOutcome,
  InspectionChanged,
  PassInspectionOutcome,
  RequestInspectionOutcome,
} from './inspection.outcomes.js';
import { InspectionReader } from './inspection-reader.js';
import { InspectionsService } from './inspections.service.js';
import { VisitingHours } from './visiting-hours.js';

const INPUT = { description: 'What happened to the inspection.' };

@Resolver(() => Inspection)
export class InspectionResolver {
  constructor(
    private readonly reader: InspectionReader,
    private readonly service: InspectionsService,
    private readonly jobs: JobReader,
    private readonly phases: PhaseReader,
    private readonly sites: SiteReader,
  ) {}

  @Query(() => Inspection, {
    nullable: true,
    description: 'One inspection; null when there is none of that id.',
  })
  inspection(
    @Ctx() ctx: Context,
    @Args('id', { type: () => ID, description: 'Id of the inspection.' }) id: string,
  ) {
    return this.reader.byId(ctx, id);
  }

  @Query(() => InspectionConnection, {
    description: 'The inspections of the company in the order they were made.',
  })
  inspections(
    @Ctx() ctx: Context,
    @Args() page: PageArgs,
    @Args('state', { type: () => InspectionState, nullable: true, description: 'Only those in this state.' })
    state?: InspectionState | null,
  ) {
    return this.reader.page(ctx, page, state ?? null);
  }

  @ResolveField(() => Inspection, { nullable: true, description: 'The failed visit before this one.' })
  previous(@Ctx() ctx: Context, @Parent() row: InspectionRow) {
    return this.reader.byId(ctx, row.previousId);
  }

  @ResolveField(() => Phase, { description: 'The phase that waits for it.' })
  phase(@Ctx() ctx: Context, @Parent() row: InspectionRow) {
    return this.phases.byId(ctx, row.phaseId);
  }

  @ResolveField(() => Job, { description: 'The job it belongs to.' })
  job(@Ctx() ctx: Context, @Parent() row: InspectionRow) {
    return this.jobs.byId(ctx, row.jobId);
  }

  @ResolveField(() => Authority, { nullable: true, description: 'The authority that visits.' })
  authority(@Ctx() ctx: Context, @Parent() row: InspectionRow) {
    return this.sites.authorityById(ctx, row.authorityId);
  }

  @ResolveField(() => PlannedVisit, { nullable: true, description: 'When the plan expects the visit.' })
  plannedVisit(@Ctx() ctx: Context, @Parent() row: InspectionRow) {
    return this.reader.plannedVisit(ctx, row.id);
  }

  @ResolveField(() => GraphQLISODateTime, {
    nullable: true,
    description:
      'Earliest visit after the request, by the notice and the visiting hours; null before a request.',
  })
  async earliestVisit(@Ctx() ctx: Context, @Parent() row: InspectionRow): Promise<Date | null> {
    const authority = await this.sites.authorityById(ctx, row.authorityId);
    if (!authority || !row.requestedAt) return null;
    return new VisitingHours(authority, row.requestedAt).earliestVisit(row.requestedAt);
  }

  @Mutation(() => RequestInspectionOutcome, {
    description: 'Records that the authority was asked for a visit.',
  })
  @Allow('office', 'foreman')
  requestInspection(@Ctx() ctx: Context, @Args('input', INPUT) input: RequestInspectionInput) {
    return this.service.request(ctx, input);
  }

  @Mutation(() => BookInspectionOutcome, { description: 'Books the window that the authority gave.' })
  @Allow('office', 'foreman')
  bookInspection(@Ctx() ctx: Context, @Args('input', INPUT) input: BookInspectionInput) {
    return this.service.book(ctx, input);
  }

  @Mutation(() => PassInspectionOutcome, { description: 'Records a pass and releases its hold point.' })
  @Allow('office', 'foreman')
  passInspection(@Ctx() ctx: Context, @Args('input', INPUT) input: PassInspectionInput) {
    return this.service.pass(ctx, input);
  }

  @Mutation(() => FailInspectionOutcome, { description: 'Records a failure and makes the re-inspection.' })
  @Allow('office', 'foreman')
  failInspection(@Ctx() ctx: Context, @Args('input', INPUT) input: FailInspectionInput) {
    return this.service.fail(ctx, input);
  }
}

@Resolver(() => InspectionChanged)
export class InspectionChangedResolver {
  constructor(private readonly reader: InspectionReader) {}

  @ResolveField(() => Inspection, { description: 'The inspection as it now stands.' })
  inspection(@Ctx() ctx: Context, @Parent() { inspectionId }: InspectionChanged) {
    return this.reader.byId(ctx, inspectionId);
  }

  @ResolveField(() => Inspection, {
    nullable: true,
    description: 'The re-inspection that a failed visit makes.',
  })
  next(@Ctx() ctx: Context, @Parent() { nextId }: InspectionChanged) {
    return this.reader.byId(ctx, nextId);
  }
}
