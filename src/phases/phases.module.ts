import { Module } from '@nestjs/common';
import { PhaseIntentsResolver } from './intents/intents.resolver.js';
import { PhaseIntentsService } from './intents/intents.service.js';
import { ObstacleReader } from './obstacle-reader.js';
import { ObstacleResolver, PhaseChangedResolver, PhasesResolver } from './phases.resolver.js';
import { PhasesService } from './phases.service.js';
import {
  BeforePredecessorResolver,
  CrewBusyResolver,
  EquipmentOutResolver,
  PredecessorUnfinishedResolver,
} from './refusals.resolver.js';
import { WeatherHeldResolver } from './weather-held.resolver.js';

/** Running phases: what is started, finished, put back, and what stands in the way. */
@Module({
  providers: [
    BeforePredecessorResolver,
    CrewBusyResolver,
    EquipmentOutResolver,
    ObstacleReader,
    ObstacleResolver,
    PhaseChangedResolver,
    PhaseIntentsResolver,
    PhaseIntentsService,
    PhasesResolver,
    PhasesService,
    PredecessorUnfinishedResolver,
    WeatherHeldResolver,
  ],
})
export class PhasesModule {}
