import { Global, Module } from '@nestjs/common';
import { CableReadingResolver } from './cable-reading.resolver.js';
import {
  HeatingSetChangedResolver,
  HeatingSetResolver,
  HoldPointHeatingSetResolver,
  JobHeatingSetsResolver,
  ReadingMissingHeatingSetResolver,
} from './heating.resolver.js';
import { HeatingReader } from './heating-reader.js';
import { HeatingService } from './heating.service.js';

/** Heating sets and their readings. */
@Global()
@Module({
  providers: [
    CableReadingResolver,
    HeatingReader,
    HeatingService,
    HeatingSetChangedResolver,
    HeatingSetResolver,
    HoldPointHeatingSetResolver,
    JobHeatingSetsResolver,
    ReadingMissingHeatingSetResolver,
  ],
  exports: [HeatingReader],
})
export class HeatingModule {}
