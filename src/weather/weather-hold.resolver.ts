import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { WeatherHold as WeatherHoldRow } from '../generated/prisma/client.js';
import { Phase, PhaseReader } from '../jobs/jobs.face.js';
import { PeopleService, Person } from '../people/people.face.js';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { Site, SiteReader } from '../sites/sites.face.js';
import { WeatherHold, WeatherHoldChanged } from './weather-hold.model.js';
import { WeatherHoldsService } from './weather-holds.service.js';
import { shownCause } from './shown-windows.js';
import { storedCauses } from './stored-causes.js';
import { WeatherReader } from './weather-reader.js';
import { WeatherCause } from './weather-windows.model.js';
import { CallWeatherHoldInput, LiftWeatherHoldInput } from './weather.inputs.js';
import { CallWeatherHoldOutcome, LiftWeatherHoldOutcome } from './weather.outcomes.js';

const INPUT = { description: 'What is asked for.' };

@Resolver(() => WeatherHold)
export class WeatherHoldResolver {
  constructor(
    private readonly weather: WeatherReader,
    private readonly holds: WeatherHoldsService,
    private readonly sites: SiteReader,
    private readonly phases: PhaseReader,
    private readonly people: PeopleService,
  ) {}

  @Query(() => WeatherHold, {
    nullable: true,
    description: 'One weather hold; null when there is none of that id.',
  })
  weatherHold(
    @Ctx() ctx: Context,
    @Args('id', { type: () => ID, description: 'Id of the hold.' }) id: string,
  ) {
    return this.weather.holdById(ctx, id);
  }

  @ResolveField(() => Site, { nullable: true, description: 'The site that is held.' })
  site(@Ctx() ctx: Context, @Parent() hold: WeatherHoldRow) {
    return this.sites.byId(ctx, hold.siteId);
  }

  @ResolveField(() => Phase, {
    nullable: true,
    description: 'The one phase that is held; null for the whole site.',
  })
  phase(@Ctx() ctx: Context, @Parent() hold: WeatherHoldRow) {
    return this.phases.byId(ctx, hold.phaseId);
  }

  @ResolveField(() => Person, { nullable: true, description: 'Who called it; null when the forecast did.' })
  calledBy(@Ctx() ctx: Context, @Parent() hold: WeatherHoldRow) {
    return hold.calledById && this.people.byId(ctx, hold.calledById);
  }

  @ResolveField(() => [WeatherCause], {
    description:
      'The limits that the forecast breaks, with the worst hour of each; none when a person called it.',
  })
  causes(@Parent() hold: WeatherHoldRow): WeatherCause[] {
    return storedCauses(hold.detail).map(shownCause);
  }

  @Mutation(() => CallWeatherHoldOutcome, {
    description: 'Holds a site, or one phase of it, for the weather.',
  })
  @Allow('office', 'foreman')
  callWeatherHold(@Ctx() ctx: Context, @Args('input', INPUT) input: CallWeatherHoldInput) {
    return this.holds.call(ctx, input);
  }

  @Mutation(() => LiftWeatherHoldOutcome, { description: 'Ends a weather hold now.' })
  @Allow('office', 'foreman')
  liftWeatherHold(@Ctx() ctx: Context, @Args('input', INPUT) input: LiftWeatherHoldInput) {
    return this.holds.lift(ctx, input);
  }
}

@Resolver(() => WeatherHoldChanged)
export class WeatherHoldChangedResolver {
  constructor(private readonly weather: WeatherReader) {}

  @ResolveField(() => WeatherHold, { nullable: true, description: 'The weather hold.' })
  weatherHold(@Ctx() ctx: Context, @Parent() done: WeatherHoldChanged) {
    return this.weather.holdById(ctx, done.weatherHoldId);
  }
}
