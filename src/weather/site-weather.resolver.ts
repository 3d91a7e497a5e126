import { Args, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Site } from '../sites/sites.face.js';
import { Forecast } from './forecast.model.js';
import { WeatherHold } from './weather-hold.model.js';
import { WeatherReader } from './weather-reader.js';

const ACTIVE = {
  type: () => Boolean,
  defaultValue: true,
  description: 'Whether holds that are lifted or over are left out.',
};

@Resolver(() => Site)
export class SiteWeatherResolver {
  constructor(private readonly weather: WeatherReader) {}

  @ResolveField(() => Forecast, {
    nullable: true,
    description: 'The newest forecast; null when there is none: the weather is then unknown, not fair.',
  })
  forecast(@Ctx() ctx: Context, @Parent() site: Site) {
    return this.weather.forecastOf(ctx, site.id);
  }

  @ResolveField(() => [WeatherHold], { description: 'The weather holds of the site in order of time.' })
  weatherHolds(@Ctx() ctx: Context, @Parent() site: Site, @Args('activeOnly', ACTIVE) activeOnly: boolean) {
    return this.weather.holdsOf(ctx, site.id, activeOnly);
  }
}
