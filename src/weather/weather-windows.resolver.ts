import { Args, GraphQLISODateTime, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Phase as PhaseRow } from '../generated/prisma/client.js';
import { Phase } from '../jobs/jobs.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Site } from '../sites/sites.face.js';
import { WeatherWindows } from './weather-windows.model.js';
import { WindowsReader } from './windows-reader.js';

const KEYS = {
  type: () => [String],
  nullable: true,
  description: 'Keys of the limits asked for; left out for all in force.',
};
const FROM = { type: () => GraphQLISODateTime, nullable: true, description: 'Begin; left out for now.' };
const TO = {
  type: () => GraphQLISODateTime,
  nullable: true,
  description: 'End, at most 92 days after the begin; left out for a week after it.',
};

@Resolver(() => Site)
export class SiteWindowsResolver {
  constructor(private readonly windows: WindowsReader) {}

  @ResolveField(() => [WeatherWindows], {
    description: 'The weather by kind of work, without protection.',
  })
  weatherWindows(
    @Ctx() ctx: Context,
    @Parent() site: Site,
    @Args('limitKeys', KEYS) limitKeys: string[] | null,
    @Args('from', FROM) from: Date | null,
    @Args('to', TO) to: Date | null,
  ) {
    return this.windows.ofSite(ctx, site.id, limitKeys ?? null, { from: from ?? null, to: to ?? null });
  }
}

@Resolver(() => Phase)
export class PhaseWindowsResolver {
  constructor(private readonly windows: WindowsReader) {}

  @ResolveField(() => WeatherWindows, {
    nullable: true,
    description:
      'The weather for the phase under the protection it takes; null when weather does not matter.',
  })
  weatherWindows(
    @Ctx() ctx: Context,
    @Parent() phase: PhaseRow,
    @Args('from', FROM) from: Date | null,
    @Args('to', TO) to: Date | null,
  ) {
    return this.windows.ofPhase(ctx, phase, { from: from ?? null, to: to ?? null });
  }
}
