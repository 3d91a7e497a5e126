import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../../platform/context.js';
import { Ctx } from '../../platform/graphql/request-context.js';
import { Phase } from '../phase.model.js';
import { PhaseReader } from '../phase-reader.js';
import { LinkCycle } from './link-cycle.js';

@Resolver(() => LinkCycle)
export class LinkCycleResolver {
  constructor(private readonly reader: PhaseReader) {}

  @ResolveField(() => [Phase], {
    description: 'The existing phases that would wait for each other, in order.',
  })
  phases(@Ctx() ctx: Context, @Parent() refusal: LinkCycle) {
    return this.reader.byIds(ctx, refusal.phaseIds);
  }
}
