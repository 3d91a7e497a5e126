import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { Site as SiteRow } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { PageArgs } from '../platform/graphql/page.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { Authority } from './authority.model.js';
import { Site } from './site.model.js';
import { SiteReader } from './site-reader.js';
import { CreateSiteInput, UpdateSiteInput } from './sites.inputs.js';
import { CreateSiteOutcome, SiteConnection, UpdateSiteOutcome } from './sites.outcomes.js';
import { SitesService } from './sites.service.js';

const INPUT = { description: 'What is asked for.' };

@Resolver(() => Site)
export class SitesResolver {
  constructor(
    private readonly reader: SiteReader,
    private readonly sitesService: SitesService,
  ) {}

  @Query(() => SiteConnection, { description: 'The sites of the company in the order they were entered.' })
  sites(@Ctx() ctx: Context, @Args() page: PageArgs) {
    return this.reader.page(ctx, page);
  }

  @Query(() => Site, { nullable: true, description: 'One site; null when there is none of that id.' })
  site(@Ctx() ctx: Context, @Args('id', { type: () => ID, description: 'Id of the site.' }) id: string) {
    return this.reader.byId(ctx, id);
  }

  @ResolveField(() => Authority, { nullable: true, description: 'The authority that inspects there.' })
  authority(@Ctx() ctx: Context, @Parent() site: SiteRow) {
    return this.reader.authorityById(ctx, site.authorityId);
  }

  @Mutation(() => CreateSiteOutcome, { description: 'Adds a site.' })
  @Allow('office')
  createSite(@Ctx() ctx: Context, @Args('input', INPUT) input: CreateSiteInput) {
    return this.sitesService.create(ctx, input);
  }

  @Mutation(() => UpdateSiteOutcome, { description: 'Changes a site.' })
  @Allow('office')
  updateSite(@Ctx() ctx: Context, @Args('input', INPUT) input: UpdateSiteInput) {
    return this.sitesService.update(ctx, input);
  }
}
