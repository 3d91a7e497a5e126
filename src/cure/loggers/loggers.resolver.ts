import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { Logger as LoggerRow, TemperatureReading as ReadingRow } from '../../generated/prisma/client.js';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { Site } from '../../sites/sites.face.js';
import { PlacementReader } from '../placement-reader.js';
import { Placement } from '../placement.model.js';
import { TemperatureReading } from '../temperature-reading.model.js';
import { Logger } from './logger.model.js';
import { LoggerReader } from './logger-reader.js';
import { RegisterLoggerInput, RevokeLoggerInput } from './loggers.inputs.js';
import {
  LoggerChanged,
  LoggerRegistered,
  RegisterLoggerOutcome,
  RevokeLoggerOutcome,
} from './loggers.outcomes.js';
import { LoggersService } from './loggers.service.js';

const INPUT = { description: 'Which logger.' };

@Resolver(() => Logger)
export class LoggerResolver {
  constructor(
    private readonly reader: LoggerReader,
    private readonly placements: PlacementReader,
    private readonly loggers: LoggersService,
  ) {}

  @Query(() => Logger, { nullable: true, description: 'One logger; null when there is none of that id.' })
  logger(@Ctx() ctx: Context, @Args('id', { type: () => ID, description: 'Id of the logger.' }) id: string) {
    return this.reader.byId(ctx, id);
  }

  @ResolveField(() => Placement, {
    nullable: true,
    description: 'The placement it sits in; null when it may post for every placement of its site.',
  })
  placement(@Ctx() ctx: Context, @Parent() row: LoggerRow) {
    return this.placements.byId(ctx, row.placementId);
  }

  @Mutation(() => RegisterLoggerOutcome, {
    description: 'Registers a temperature logger and shows its token this one time.',
  })
  @Allow('office', 'foreman')
  registerLogger(@Ctx() ctx: Context, @Args('input', INPUT) input: RegisterLoggerInput) {
    return this.loggers.register(ctx, input);
  }

  @Mutation(() => RevokeLoggerOutcome, {
    description: 'Revokes the token of a logger; what it posted stays.',
  })
  @Allow('office', 'foreman')
  revokeLogger(@Ctx() ctx: Context, @Args('input', INPUT) input: RevokeLoggerInput) {
    return this.loggers.revoke(ctx, input);
  }
}

@Resolver(() => LoggerRegistered)
export class LoggerRegisteredResolver {
  constructor(private readonly reader: LoggerReader) {}

  @ResolveField(() => Logger, { description: 'The logger.' })
  logger(@Ctx() ctx: Context, @Parent() { loggerId }: LoggerRegistered) {
    return this.reader.byId(ctx, loggerId);
  }
}

@Resolver(() => LoggerChanged)
export class LoggerChangedResolver {
  constructor(private readonly reader: LoggerReader) {}

  @ResolveField(() => Logger, { description: 'The logger as it now stands.' })
  logger(@Ctx() ctx: Context, @Parent() { loggerId }: LoggerChanged) {
    return this.reader.byId(ctx, loggerId);
  }
}

@Resolver(() => Site)
export class SiteLoggersResolver {
  constructor(private readonly reader: LoggerReader) {}

  @ResolveField(() => [Logger], { description: 'The loggers of the site, revoked ones included.' })
  loggers(@Ctx() ctx: Context, @Parent() site: Site) {
    return this.reader.ofSite(ctx, site.id);
  }
}

@Resolver(() => TemperatureReading)
export class ReadingLoggerResolver {
  constructor(private readonly reader: LoggerReader) {}

  @ResolveField(() => Logger, {
    nullable: true,
    description: 'The logger that posted it; null when typed in.',
  })
  logger(@Ctx() ctx: Context, @Parent() row: ReadingRow) {
    return this.reader.byId(ctx, row.loggerId);
  }
}
