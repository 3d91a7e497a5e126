import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Job } from './job.model.js';
import { JobReader } from './job-reader.js';
import { JobChanged } from './jobs.outcomes.js';

@Resolver(() => JobChanged)
export class JobChangedResolver {
  constructor(private readonly reader: JobReader) {}

  @ResolveField(() => Job, { description: 'The job.' })
  job(@Ctx() ctx: Context, @Parent() done: JobChanged) {
    return this.reader.byId(ctx, done.jobId);
  }
}
