import { Args, ID, Query, Resolver } from '@nestjs/graphql';
import { Phase } from '../jobs/jobs.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { TodayService } from './today.service.js';

const CREW = {
  type: () => ID,
  nullable: true,
  description: "The crew; when left out, the person's crews, or all crews for a person without one.",
};

@Resolver()
export class TodayResolver {
  constructor(private readonly service: TodayService) {}

  @Query(() => [Phase], {
    description: 'Phases for now: those under way, then those planned to touch today or tomorrow.',
  })
  today(@Ctx() ctx: Context, @Args('crewId', CREW) crewId?: string | null) {
    return this.service.today(ctx, crewId ?? null);
  }
}
