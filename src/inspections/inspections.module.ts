import { Global, Module } from '@nestjs/common';
import { HoldPointChangedResolver, HoldPointResolver } from './hold-point.resolver.js';
import { HoldPointReader } from './hold-point-reader.js';
import { HoldPointsService } from './hold-points.service.js';
import { InspectionChangedResolver, InspectionResolver } from './inspection.resolver.js';
import { InspectionReader } from './inspection-reader.js';
import { InspectionsService } from './inspections.service.js';
import { DecideResolver } from './intents/decide.resolver.js';
import { DecideService } from './intents/decide.service.js';
import { JobInspectionsResolver, PhaseHoldPointsResolver } from './of-jobs-and-phases.resolver.js';
import {
  ClearanceMissingResolver,
  HoldPointOpenResolver,
  InspectionOutstandingResolver,
  ReadingMissingResolver,
} from './refusals.resolver.js';

/** Hold points, and the visits of the authority that release some of them. */
@Global()
@Module({
  providers: [
    ClearanceMissingResolver,
    DecideResolver,
    DecideService,
    HoldPointChangedResolver,
    HoldPointOpenResolver,
    HoldPointReader,
    HoldPointResolver,
    HoldPointsService,
    InspectionChangedResolver,
    InspectionOutstandingResolver,
    InspectionReader,
    InspectionResolver,
    InspectionsService,
    JobInspectionsResolver,
    PhaseHoldPointsResolver,
    ReadingMissingResolver,
  ],
  exports: [HoldPointReader, InspectionReader],
})
export class InspectionsModule {}
