import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Crew } from './crew.model.js';
import { CrewReader } from './crew-reader.js';
import { CrewChanged } from './crews.outcomes.js';

@Resolver(() => CrewChanged)
export class CrewChangedResolver {
  constructor(private readonly reader: CrewReader) {}

  @ResolveField(() => Crew, { description: 'The crew.' })
  crew(@Ctx() ctx: Context, @Parent() done: CrewChanged) {
    return this.reader.byId(ctx, done.crewId);
  }
}
