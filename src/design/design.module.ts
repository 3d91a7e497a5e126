import { Global, Module } from '@nestjs/common';
import { EntryDesigner } from './entry-designer.js';
import { JobDesignResolver } from './job-design.resolver.js';

/** The design of an entry from its measurement. */
@Global()
@Module({ providers: [EntryDesigner, JobDesignResolver], exports: [EntryDesigner] })
export class DesignModule {}
