import { Args, ID, Resolver, Subscription } from '@nestjs/graphql';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { HintBus } from '../platform/hints/hint-bus.js';
import { Hint } from './hint.model.js';
import { hintsOfJobs } from './hints-of-jobs.js';

const JOBS = {
  type: () => [ID],
  nullable: true,
  description: 'Only hints about these jobs; all when left out.',
};

@Resolver()
export class ChangedResolver {
  constructor(private readonly bus: HintBus) {}

  @Subscription(() => Hint, {
    description: 'Says that something changed; ask for the changes since the number you saw last.',
  })
  changed(@Ctx() ctx: Context, @Args('jobIds', JOBS) jobIds?: string[] | null) {
    return hintsOfJobs(this.bus.listen(ctx.companyId), jobIds ?? null);
  }
}
