import { Module } from '@nestjs/common';
import { OwnerFactsReader } from './owner-facts-reader.js';
import { OwnerWeekResolver } from './owner-week.resolver.js';
import { OwnerWeekService } from './owner-week.service.js';

/** What the owner of the house reads of the job. */
@Module({ providers: [OwnerFactsReader, OwnerWeekResolver, OwnerWeekService] })
export class OwnerWeekModule {}
