import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { CAUTIONS } from '../../shared/entry/template/default/cautions.js';
import type {
  HeatingSet as SetRow,
  HoldPoint as PointRow,
  Job as JobRow,
} from '../generated/prisma/client.js';
import { HoldPoint, ReadingMissing } from '../inspections/inspections.face.js';
import { Area, Job } from '../jobs/jobs.face.js';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { CableReading } from './cable-reading.model.js';
import { ReceiveHeatingSetInput, RecordCableReadingInput } from './heating.inputs.js';
import {
  HeatingSetChanged,
  ReceiveHeatingSetOutcome,
  RecordCableReadingOutcome,
} from './heating.outcomes.js';
import { HeatingReader } from './heating-reader.js';
import { HeatingService } from './heating.service.js';
import { HeatingSet } from './heating-set.model.js';

const INPUT = { description: 'What was delivered or read.' };

@Resolver(() => HeatingSet)
export class HeatingSetResolver {
  constructor(
    private readonly reader: HeatingReader,
    private readonly heating: HeatingService,
  ) {}

  @Query(() => HeatingSet, {
    nullable: true,
    description: 'One heating set; null when there is none of that id.',
  })
  heatingSet(
    @Ctx() ctx: Context,
    @Args('id', { type: () => ID, description: 'Id of the heating set.' }) id: string,
  ) {
    return this.reader.byId(ctx, id);
  }

  @ResolveField(() => [Area], { description: 'The areas its uncut cable runs through, in turn.' })
  areas(@Ctx() ctx: Context, @Parent() row: SetRow) {
    return this.reader.areas(ctx, row.id);
  }

  @ResolveField(() => [CableReading], { description: 'Its readings in order of time.' })
  readings(@Ctx() ctx: Context, @Parent() row: SetRow) {
    return this.reader.readings(ctx, row.id);
  }

  @ResolveField(() => [String], { description: 'What people who handle it must mind.' })
  cautions(): string[] {
    return [CAUTIONS.coiled, CAUTIONS.energise, CAUTIONS.electrical];
  }

  @Mutation(() => ReceiveHeatingSetOutcome, { description: 'Takes the label of a heating set as delivered.' })
  @Allow('office', 'foreman')
  receiveHeatingSet(@Ctx() ctx: Context, @Args('input', INPUT) input: ReceiveHeatingSetInput) {
    return this.heating.receive(ctx, input);
  }

  @Mutation(() => RecordCableReadingOutcome, {
    description: 'Records a reading; an accepted one releases its hold point, a failing one closes it again.',
  })
  @Allow('office', 'foreman')
  recordCableReading(@Ctx() ctx: Context, @Args('input', INPUT) input: RecordCableReadingInput) {
    return this.heating.recordReading(ctx, input);
  }
}

@Resolver(() => HeatingSetChanged)
export class HeatingSetChangedResolver {
  constructor(private readonly reader: HeatingReader) {}

  @ResolveField(() => HeatingSet, { description: 'The heating set as it now stands.' })
  heatingSet(@Ctx() ctx: Context, @Parent() { heatingSetId }: HeatingSetChanged) {
    return this.reader.byId(ctx, heatingSetId);
  }

  @ResolveField(() => CableReading, { nullable: true, description: 'The reading just recorded.' })
  reading(@Ctx() ctx: Context, @Parent() { readingId }: HeatingSetChanged) {
    return this.reader.readingById(ctx, readingId);
  }
}

@Resolver(() => Job)
export class JobHeatingSetsResolver {
  constructor(private readonly reader: HeatingReader) {}

  @ResolveField(() => [HeatingSet], { description: 'The heating sets of the job by key.' })
  heatingSets(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.reader.ofJob(ctx, job.id);
  }
}

@Resolver(() => HoldPoint)
export class HoldPointHeatingSetResolver {
  constructor(private readonly reader: HeatingReader) {}

  @ResolveField(() => HeatingSet, {
    nullable: true,
    description: 'The heating set whose reading releases it.',
  })
  heatingSet(@Ctx() ctx: Context, @Parent() point: PointRow) {
    return this.reader.byId(ctx, point.heatingSetId);
  }
}

@Resolver(() => ReadingMissing)
export class ReadingMissingHeatingSetResolver {
  constructor(private readonly reader: HeatingReader) {}

  @ResolveField(() => HeatingSet, { nullable: true, description: 'The heating set that must be read.' })
  heatingSet(@Ctx() ctx: Context, @Parent() { heatingSetId }: ReadingMissing) {
    return this.reader.byId(ctx, heatingSetId);
  }
}
