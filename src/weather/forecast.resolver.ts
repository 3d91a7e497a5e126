import { Args, GraphQLISODateTime, Int, Mutation, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Forecast as ForecastRow } from '../generated/prisma/client.js';
import { HOUR_MS } from '../../shared/units/time.js';
import { Clock } from '../platform/clock/clock.js';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { Site, SiteReader } from '../sites/sites.face.js';
import { Forecast, ForecastHour, ForecastReceived } from './forecast.model.js';
import { ForecastsService } from './forecasts.service.js';
import { ownHours } from './stored-forecast.js';
import { UploadForecastInput } from './weather.inputs.js';
import { UploadForecastOutcome } from './weather.outcomes.js';

const FROM = {
  type: () => GraphQLISODateTime,
  nullable: true,
  description: 'Leaves out hours that end before.',
};
const TO = { type: () => GraphQLISODateTime, nullable: true, description: 'Leaves out hours from here on.' };

@Resolver(() => Forecast)
export class ForecastResolver {
  constructor(
    private readonly forecasts: ForecastsService,
    private readonly clock: Clock,
  ) {}

  @ResolveField(() => Int, {
    description: 'Its age: full minutes since it was issued. A failed fetch does not make it younger.',
  })
  ageMinutes(@Parent() row: ForecastRow): number {
    return Math.max(0, Math.floor((this.clock.now().getTime() - row.issuedAt.getTime()) / 60_000));
  }

  @ResolveField(() => [ForecastHour], {
    description: 'The hours in order of time; an hour left out is unknown.',
  })
  hours(
    @Parent() row: ForecastRow,
    @Args('from', FROM) from: Date | null,
    @Args('to', TO) to: Date | null,
  ): ForecastHour[] {
    const after = from?.getTime() ?? -Infinity;
    const before = to?.getTime() ?? Infinity;
    return ownHours(row)
      .filter(({ at }) => at + HOUR_MS > after && at < before)
      .map((hour) => ({
        at: new Date(hour.at),
        temperatureF: hour.temperature,
        dewPointF: hour.dewPoint,
        windMph: hour.wind,
        gustMph: hour.gust,
        rainChance: hour.rainChance,
        rainInches: hour.rainAmount,
      }));
  }

  @Mutation(() => UploadForecastOutcome, {
    description: 'Takes an hourly forecast of a site; holds and plan follow it at once.',
  })
  @Allow('office', 'foreman')
  uploadForecast(
    @Ctx() ctx: Context,
    @Args('input', { description: 'What is asked for.' }) input: UploadForecastInput,
  ) {
    return this.forecasts.upload(ctx, input);
  }
}

@Resolver(() => ForecastReceived)
export class ForecastReceivedResolver {
  constructor(private readonly sites: SiteReader) {}

  @ResolveField(() => Site, { description: 'The site.' })
  site(@Ctx() ctx: Context, @Parent() done: ForecastReceived) {
    return this.sites.byId(ctx, done.siteId);
  }
}
