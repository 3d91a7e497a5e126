import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../../platform/context.js';
import { Ctx } from '../../platform/graphql/request-context.js';
import { JobReader } from '../job-reader.js';
import { Clearance } from './clearance.model.js';
import { ClearanceChanged } from './clearances.outcomes.js';

@Resolver(() => ClearanceChanged)
export class ClearanceChangedResolver {
  constructor(private readonly reader: JobReader) {}

  @ResolveField(() => Clearance, { description: 'The clearance.' })
  clearance(@Ctx() ctx: Context, @Parent() done: ClearanceChanged) {
    return this.reader.clearanceById(ctx, done.clearanceId);
  }
}
