import { Query, Resolver } from '@nestjs/graphql';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { OwnerWeek } from './owner-week.model.js';
import { OwnerWeekService } from './owner-week.service.js';

@Resolver(() => OwnerWeek)
export class OwnerWeekResolver {
  constructor(private readonly service: OwnerWeekService) {}

  @Query(() => OwnerWeek, {
    description: 'The next seven days of the job to which a signed link of its owner belongs.',
  })
  ownerWeek(@Ctx() ctx: Context): Promise<OwnerWeek> {
    return this.service.week(ctx);
  }
}
