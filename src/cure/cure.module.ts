import { Global, Module } from '@nestjs/common';
import {
  JobPlacementsResolver,
  PlacementChangedResolver,
  PlacementResolver,
  TemperatureReadingResolver,
} from './cure.resolver.js';
import { PlacementReader } from './placement-reader.js';
import { PlacementsService } from './placements.service.js';

/** Placements, their temperatures and their strength. */
@Global()
@Module({
  providers: [
    JobPlacementsResolver,
    PlacementChangedResolver,
    PlacementReader,
    PlacementResolver,
    PlacementsService,
    TemperatureReadingResolver,
  ],
  exports: [PlacementReader],
})
export class CureModule {}
