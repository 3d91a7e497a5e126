import { Module } from '@nestjs/common';
import { ImprovementRows } from './improve/improvement-rows.js';
import { Improver } from './improve/improver.js';

/** What a worker needs to search for better plans. */
@Module({ providers: [ImprovementRows, Improver], exports: [Improver] })
export class ImproverModule {}
