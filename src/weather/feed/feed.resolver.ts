import { Args, Mutation, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Site as SiteRow } from '../../generated/prisma/client.js';
import { ForecastSource } from '../../generated/prisma/enums.js';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { Site, SiteReader } from '../../sites/sites.face.js';
import { ChooseForecastSourceInput } from './choose-source.input.js';
import { ChooseSourceService } from './choose-source.service.js';
import { FeedReader } from './feed-reader.js';
import { ForecastFeed, ForecastSourceChosen } from './feed.model.js';
import { ChooseForecastSourceOutcome } from './feed.outcomes.js';

@Resolver(() => Site)
export class SiteFeedResolver {
  constructor(
    private readonly feeds: FeedReader,
    private readonly chooser: ChooseSourceService,
  ) {}

  @ResolveField(() => ForecastSource, { description: 'Where its forecasts come from.' })
  forecastSource(@Parent() site: SiteRow): ForecastSource {
    return site.forecastSource;
  }

  @ResolveField(() => ForecastFeed, {
    nullable: true,
    description: 'How fetching its forecasts stands; null where they are uploaded.',
  })
  forecastFeed(@Ctx() ctx: Context, @Parent() site: SiteRow) {
    return site.forecastSource === 'uploaded' ? null : this.feeds.feedOf(ctx, site.id);
  }

  @Mutation(() => ChooseForecastSourceOutcome, {
    description:
      'Chooses where the forecasts of a site come from. Another source is fetched at once; until it answers the forecast in use stays.',
  })
  @Allow('office')
  chooseForecastSource(
    @Ctx() ctx: Context,
    @Args('input', { description: 'What is asked for.' }) input: ChooseForecastSourceInput,
  ) {
    return this.chooser.choose(ctx, input);
  }
}

@Resolver(() => ForecastSourceChosen)
export class ForecastSourceChosenResolver {
  constructor(private readonly sites: SiteReader) {}

  @ResolveField(() => Site, { description: 'The site.' })
  site(@Ctx() ctx: Context, @Parent() done: ForecastSourceChosen) {
    return this.sites.byId(ctx, done.siteId);
  }
}
