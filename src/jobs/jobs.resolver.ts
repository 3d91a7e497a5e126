import { Args, ID, Int, Mutation, Query, Resolver } from '@nestjs/graphql';
import { JobState } from '../generated/prisma/enums.js';
import type { Context } from '../platform/context.js';
import { PageArgs } from '../platform/graphql/page.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { CreateJobService } from './entering/create-job.service.js';
import { DesignChangesService } from './entering/design-changes.service.js';
import {
  CancelJobInput,
  CorrectMeasurementInput,
  CreateJobInput,
  UpdateJobInput,
  WaiveFindingInput,
} from './entering/jobs.inputs.js';
import { JobsService } from './entering/jobs.service.js';
import { Job } from './job.model.js';
import { JobReader } from './job-reader.js';
import {
  CancelJobOutcome,
  CorrectMeasurementOutcome,
  CreateJobOutcome,
  JobConnection,
  UpdateJobOutcome,
  WaiveFindingOutcome,
} from './jobs.outcomes.js';

const INPUT = { description: 'What is asked for.' };
const STATE = { type: () => JobState, nullable: true, description: 'Only jobs in this state.' };

@Resolver(() => Job)
export class JobsResolver {
  constructor(
    private readonly reader: JobReader,
    private readonly entering: CreateJobService,
    private readonly service: JobsService,
    private readonly design: DesignChangesService,
  ) {}

  @Query(() => JobConnection, { description: 'The jobs of the company in the order they were entered.' })
  jobs(@Ctx() ctx: Context, @Args() page: PageArgs, @Args('state', STATE) state?: JobState | null) {
    return this.reader.page(ctx, page, state ?? null);
  }

  @Query(() => Job, { nullable: true, description: 'One job; null when there is none of that id.' })
  job(@Ctx() ctx: Context, @Args('id', { type: () => ID, description: 'Id of the job.' }) id: string) {
    return this.reader.byId(ctx, id);
  }

  @Query(() => Job, { nullable: true, description: 'The job of that number; null when there is none.' })
  jobByNumber(
    @Ctx() ctx: Context,
    @Args('number', { type: () => Int, description: 'Number of the job.' }) number: number,
  ) {
    return this.reader.byNumber(ctx, number);
  }

  @Mutation(() => CreateJobOutcome, { description: 'Enters a job from the measurements of a site visit.' })
  @Allow('office')
  createJob(@Ctx() ctx: Context, @Args('input', INPUT) input: CreateJobInput) {
    return this.entering.create(ctx, input);
  }

  @Mutation(() => UpdateJobOutcome, { description: 'Changes a job.' })
  @Allow('office')
  updateJob(@Ctx() ctx: Context, @Args('input', INPUT) input: UpdateJobInput) {
    return this.service.update(ctx, input);
  }

  @Mutation(() => CorrectMeasurementOutcome, {
    description:
      'Takes corrected measurements of the same areas and heating sets; quantities, the work of phases that have not begun and what the rules say follow.',
  })
  @Allow('office')
  correctMeasurement(@Ctx() ctx: Context, @Args('input', INPUT) input: CorrectMeasurementInput) {
    return this.design.correct(ctx, input);
  }

  @Mutation(() => WaiveFindingOutcome, {
    description: 'Goes on against a broken rule of the design that trade or common practice made, by reason.',
  })
  @Allow('office')
  waiveFinding(@Ctx() ctx: Context, @Args('input', INPUT) input: WaiveFindingInput) {
    return this.design.waive(ctx, input);
  }

  @Mutation(() => CancelJobOutcome, { description: 'Gives a job up; its commitments are released.' })
  @Allow('office')
  cancelJob(@Ctx() ctx: Context, @Args('input', INPUT) input: CancelJobInput) {
    return this.service.cancel(ctx, input);
  }
}
