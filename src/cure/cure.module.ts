import { Global, Module, type OnModuleInit } from '@nestjs/common';
import { ChangeSteps } from '../platform/change/change-steps.js';
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
import { ChoiceReader } from './protect-or-wait/choice-reader.js';
import {
  BranchJobResolver,
  PhaseChoiceResolver,
  ProtectionChoiceResolver,
  ProtectionChosenResolver,
  ProtectOrWaitResolver,
} from './protect-or-wait/protect-or-wait.resolver.js';
import { ProtectOrWaitService } from './protect-or-wait/protect-or-wait.service.js';
import { PlacementProtectionResolver } from './protection/protection.resolver.js';
import { ProtectionService } from './protection/protection.service.js';
import { MeasuredCourses } from './measured-courses.js';
import { watchStep } from './watch/watch.step.js';

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
    MeasuredCourses,
    PlacementAlarmsResolver,
    PlacementChangedResolver,
    PlacementReader,
    PlacementResolver,
    PlacementProtectionResolver,
    PlacementsService,
    ProtectionService,
    BranchJobResolver,
    ChoiceReader,
    PhaseChoiceResolver,
    ProtectionChoiceResolver,
    ProtectionChosenResolver,
    ProtectOrWaitResolver,
    ProtectOrWaitService,
    ReadingLoggerResolver,
    SiteLoggersResolver,
    TemperatureReadingResolver,
  ],
  exports: [MeasuredCourses, PlacementReader],
})
export class CureModule implements OnModuleInit {
  constructor(private readonly steps: ChangeSteps) {}

  onModuleInit(): void {
    this.steps.register('cureWatch', watchStep);
  }
}
