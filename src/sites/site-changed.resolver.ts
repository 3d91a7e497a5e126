import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Site } from './site.model.js';
import { SiteReader } from './site-reader.js';
import { SiteChanged } from './sites.outcomes.js';

@Resolver(() => SiteChanged)
export class SiteChangedResolver {
  constructor(private readonly reader: SiteReader) {}

  @ResolveField(() => Site, { description: 'The site.' })
  site(@Ctx() ctx: Context, @Parent() done: SiteChanged) {
    return this.reader.byId(ctx, done.siteId);
  }
}
