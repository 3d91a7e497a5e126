import { Global, Module } from '@nestjs/common';
import { JobReader } from './job-reader.js';
import { PhaseReader } from './phase-reader.js';

/** Jobs with everything that makes them up. */
@Global()
@Module({ providers: [JobReader, PhaseReader], exports: [JobReader, PhaseReader] })
export class JobsModule {}
