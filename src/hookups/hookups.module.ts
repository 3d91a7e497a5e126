import { Module } from '@nestjs/common';
import { HookupReader } from './hookup-reader.js';
import {
  HeatingSetHookupResolver,
  HookupChangedResolver,
  HookupsResolver,
  JobHookupsResolver,
} from './hookups.resolver.js';
import { HookupsService } from './hookups.service.js';
import { HookupSheetResolver } from './sheet/hookup-sheet.resolver.js';
import { ReadinessStep } from './readiness/readiness.step.js';

/** Hookups, and the step after every change that tells when they are ready. */
@Module({
  providers: [
    HeatingSetHookupResolver,
    HookupChangedResolver,
    HookupReader,
    HookupSheetResolver,
    HookupsResolver,
    HookupsService,
    JobHookupsResolver,
    ReadinessStep,
  ],
})
export class HookupsModule {}
