import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Authority } from './authority.model.js';
import { SiteReader } from './site-reader.js';
import { AuthorityChanged } from './sites.outcomes.js';

@Resolver(() => AuthorityChanged)
export class AuthorityChangedResolver {
  constructor(private readonly reader: SiteReader) {}

  @ResolveField(() => Authority, { description: 'The authority.' })
  authority(@Ctx() ctx: Context, @Parent() done: AuthorityChanged) {
    return this.reader.authorityById(ctx, done.authorityId);
  }
}
