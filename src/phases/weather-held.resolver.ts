import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { WeatherHold } from '../weather/weather.face.js';
import { WeatherHeld } from './errors/weather-held.js';

@Resolver(() => WeatherHeld)
export class WeatherHeldResolver {
  constructor(private readonly database: Database) {}

  @ResolveField(() => [WeatherHold], {
    description: 'The holds that stand; none when the newest forecast breaks a limit without a hold.',
  })
  holds(@Ctx() ctx: Context, @Parent() { holdIds }: WeatherHeld) {
    return this.database.weatherHold.findMany({
      where: { companyId: ctx.companyId, id: { in: [...holdIds] } },
      orderBy: [{ startsAt: 'asc' }, { id: 'asc' }],
    });
  }
}
