import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import { Area, Clearance, JobReader } from '../jobs/jobs.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { ClearanceMissing } from './errors/clearance-missing.js';
import { HoldPointOpen } from './errors/hold-point-open.js';
import { InspectionOutstanding } from './errors/inspection-outstanding.js';
import { ReadingMissing } from './errors/reading-missing.js';
import { HoldPoint } from './hold-point.model.js';
import { HoldPointReader } from './hold-point-reader.js';
import { Inspection } from './inspection.model.js';
import { InspectionReader } from './inspection-reader.js';

@Resolver(() => HoldPointOpen)
export class HoldPointOpenResolver {
  constructor(private readonly reader: HoldPointReader) {}

  @ResolveField(() => [HoldPoint], { description: 'The hold points that are not released.' })
  holdPoints(@Ctx() ctx: Context, @Parent() { holdPointIds }: HoldPointOpen) {
    return this.reader.byIds(ctx, holdPointIds);
  }
}

@Resolver(() => InspectionOutstanding)
export class InspectionOutstandingResolver {
  constructor(private readonly reader: InspectionReader) {}

  @ResolveField(() => [Inspection], { description: 'The inspections that have not passed.' })
  inspections(@Ctx() ctx: Context, @Parent() { inspectionIds }: InspectionOutstanding) {
    return this.reader.byIds(ctx, inspectionIds);
  }
}

@Resolver(() => ClearanceMissing)
export class ClearanceMissingResolver {
  constructor(private readonly jobs: JobReader) {}

  @ResolveField(() => [Clearance], { description: 'The clearances that do not stand.' })
  async clearances(@Ctx() ctx: Context, @Parent() { clearanceIds }: ClearanceMissing) {
    const found = await Promise.all(clearanceIds.map((id) => this.jobs.clearanceById(ctx, id)));
    return found.filter((clearance) => clearance !== null);
  }
}

/** `heatingSet` is added by the feature that owns heating sets. */
@Resolver(() => ReadingMissing)
export class ReadingMissingResolver {
  constructor(private readonly jobs: JobReader) {}

  @ResolveField(() => Area, { nullable: true, description: 'Area whose reading is missing.' })
  area(@Ctx() ctx: Context, @Parent() { areaId }: ReadingMissing) {
    return this.jobs.areaById(ctx, areaId);
  }
}
