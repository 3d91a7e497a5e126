import { Args, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { FREEZE_THAW_LIMIT } from '../../shared/weather/freeze-thaw-limit.js';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import type { LimitSetInForce } from './limit-sets.js';
import { shownLimit, shownRequirement } from './shown-limit.js';
import { WeatherLimit, WeatherLimitSet, WeatherLimitsSaved } from './weather-limits.model.js';
import { WeatherLimitsService } from './weather-limits.service.js';
import { WeatherReader } from './weather-reader.js';
import { SaveWeatherLimitsInput } from './weather.inputs.js';
import { SaveWeatherLimitsOutcome } from './weather.outcomes.js';

@Resolver(() => WeatherLimitSet)
export class WeatherLimitsResolver {
  constructor(
    private readonly weather: WeatherReader,
    private readonly limitsService: WeatherLimitsService,
  ) {}

  @Query(() => [WeatherLimitSet], {
    description:
      'The weather limits in force by name: the own ones of the company, and defaults for the rest.',
  })
  weatherLimitSets(@Ctx() ctx: Context) {
    return this.weather.limitSets(ctx);
  }

  @ResolveField(() => [WeatherLimit], { description: 'The limits; each of them closes the work by itself.' })
  limits(@Parent() set: LimitSetInForce): WeatherLimit[] {
    return set.limits.map(shownLimit);
  }

  @ResolveField(() => [WeatherLimit], {
    description: 'What the weather asks for while the work goes on; none of it closes the work.',
  })
  requirements(@Parent() set: LimitSetInForce): WeatherLimit[] {
    return set.requirements.map(shownRequirement);
  }

  @ResolveField(() => String, { description: 'The limits as JSON, to edit and save.' })
  body(@Parent() set: LimitSetInForce): string {
    return JSON.stringify(set.limits);
  }

  @ResolveField(() => String, { description: 'The requirements as JSON, to edit and save.' })
  requirementsBody(@Parent() set: LimitSetInForce): string {
    return JSON.stringify(set.requirements);
  }

  @Query(() => [WeatherLimit], {
    description: 'Limits that no set has unless the company takes them into its own.',
  })
  weatherLimitOptions(): WeatherLimit[] {
    return [shownLimit(FREEZE_THAW_LIMIT)];
  }

  @Mutation(() => SaveWeatherLimitsOutcome, { description: 'Saves the weather limits of a kind of work.' })
  @Allow('office')
  saveWeatherLimits(
    @Ctx() ctx: Context,
    @Args('input', { description: 'What is asked for.' }) input: SaveWeatherLimitsInput,
  ) {
    return this.limitsService.save(ctx, input);
  }
}

@Resolver(() => WeatherLimitsSaved)
export class WeatherLimitsSavedResolver {
  constructor(private readonly weather: WeatherReader) {}

  @ResolveField(() => WeatherLimitSet, { nullable: true, description: 'The limits.' })
  async limitSet(@Ctx() ctx: Context, @Parent() done: WeatherLimitsSaved) {
    const sets = await this.weather.limitSets(ctx);
    return sets.find(({ key }) => key === done.key) ?? null;
  }
}
