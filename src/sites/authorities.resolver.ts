import { Args, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { DayHours, weekRows } from '../crews/crews.face.js';
import type { Authority as AuthorityRow } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { AuthoritiesService } from './authorities.service.js';
import { CreateAuthorityInput } from './authorities.inputs.js';
import { Authority } from './authority.model.js';
import { SiteReader } from './site-reader.js';
import { CreateAuthorityOutcome } from './sites.outcomes.js';

@Resolver(() => Authority)
export class AuthoritiesResolver {
  constructor(
    private readonly reader: SiteReader,
    private readonly service: AuthoritiesService,
  ) {}

  @Query(() => [Authority], { description: 'The authorities of the company by name.' })
  authorities(@Ctx() ctx: Context) {
    return this.reader.authorities(ctx);
  }

  @ResolveField(() => [DayHours], { description: 'Visiting hours: all seven days, Monday first.' })
  week(@Parent() authority: AuthorityRow) {
    return weekRows(authority.week);
  }

  @Mutation(() => CreateAuthorityOutcome, { description: 'Adds an authority having jurisdiction.' })
  @Allow('office')
  createAuthority(
    @Ctx() ctx: Context,
    @Args('input', { description: 'What is asked for.' }) input: CreateAuthorityInput,
  ) {
    return this.service.create(ctx, input);
  }
}
