import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { Clearance as ClearanceRow } from '../../generated/prisma/client.js';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { Job } from '../job.model.js';
import { JobReader } from '../job-reader.js';
import { Clearance } from './clearance.model.js';
import { RecordClearanceInput, RequestClearanceInput } from './clearances.inputs.js';
import { RecordClearanceOutcome, RequestClearanceOutcome } from './clearances.outcomes.js';
import { ClearancesService } from './clearances.service.js';

const INPUT = { description: 'What is asked for.' };

@Resolver(() => Clearance)
export class ClearancesResolver {
  constructor(
    private readonly reader: JobReader,
    private readonly service: ClearancesService,
  ) {}

  @Query(() => Clearance, {
    nullable: true,
    description: 'One clearance; null when there is none of that id.',
  })
  clearance(
    @Ctx() ctx: Context,
    @Args('id', { type: () => ID, description: 'Id of the clearance.' }) id: string,
  ) {
    return this.reader.clearanceById(ctx, id);
  }

  @ResolveField(() => Job, { description: 'The job that needs it.' })
  job(@Ctx() ctx: Context, @Parent() clearance: ClearanceRow) {
    return this.reader.byId(ctx, clearance.jobId);
  }

  @Mutation(() => RequestClearanceOutcome, { description: 'Notes that a clearance was asked for now.' })
  @Allow('office')
  requestClearance(@Ctx() ctx: Context, @Args('input', INPUT) input: RequestClearanceInput) {
    return this.service.request(ctx, input);
  }

  @Mutation(() => RecordClearanceOutcome, { description: 'Notes that a clearance was given.' })
  @Allow('office')
  recordClearance(@Ctx() ctx: Context, @Args('input', INPUT) input: RecordClearanceInput) {
    return this.service.record(ctx, input);
  }
}
