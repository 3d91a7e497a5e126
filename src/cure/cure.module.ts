import { Global, Module } from '@nestjs/common';
import { AlarmReader } from './alarms/alarm-reader.js';
import { CureAlarmResolver, PlacementAlarmsResolver } from './alarms/alarms.resolver.js';
import {
  JobPlacementsResolver,
  PlacementChangedResolver,
  PlacementResolver,
  TemperatureReadingResolver,
} from './cure.resolver.js';
import { LoggerGate } from './loggers/logger-gate.js';
import { LoggerPostsService } from './loggers/logger-posts.service.js';
import { LoggerReader } from './loggers/logger-reader.js';
import { LoggerReadingsRoute } from './loggers/logger-readings.route.js';
import {
  LoggerChangedResolver,
  LoggerRegisteredResolver,
  LoggerResolver,
  ReadingLoggerResolver,
  SiteLoggersResolver,
} from './loggers/loggers.resolver.js';
import { LoggersService } from './loggers/loggers.service.js';
import { PlacementReader } from './placement-reader.js';
import { PlacementsService } from './placements.service.js';

/** Placements, their temperatures and their strength. */
@Global()
@Module({
  providers: [
    AlarmReader,
    CureAlarmResolver,
    JobPlacementsResolver,
    LoggerChangedResolver,
    LoggerGate,
    LoggerPostsService,
    LoggerReader,
    LoggerReadingsRoute,
    LoggerRegisteredResolver,
    LoggerResolver,
    LoggersService,
    PlacementAlarmsResolver,
    PlacementChangedResolver,
    PlacementReader,
    PlacementResolver,
    PlacementsService,
    ReadingLoggerResolver,
    SiteLoggersResolver,
    TemperatureReadingResolver,
  ],
  exports: [PlacementReader],
})
export class CureModule {}
