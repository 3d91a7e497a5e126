import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Job as JobRow, Phase as PhaseRow } from '../generated/prisma/client.js';
import { Job, Phase } from '../jobs/jobs.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { HoldPoint } from './hold-point.model.js';
import { HoldPointReader } from './hold-point-reader.js';
import { Inspection } from './inspection.model.js';
import { InspectionReader } from './inspection-reader.js';

@Resolver(() => Job)
export class JobInspectionsResolver {
  constructor(
    private readonly points: HoldPointReader,
    private readonly inspectionReader: InspectionReader,
  ) {}

  @ResolveField(() => [HoldPoint], { description: 'Hold points of the job in the order of its phases.' })
  holdPoints(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.points.ofJob(ctx, job.id);
  }

  @ResolveField(() => [Inspection], {
    description: 'Inspections of the job, re-inspections after the first.',
  })
  inspections(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.inspectionReader.ofJob(ctx, job.id);
  }
}

@Resolver(() => Phase)
export class PhaseHoldPointsResolver {
  constructor(private readonly points: HoldPointReader) {}

  @ResolveField(() => [HoldPoint], {
    description: 'Hold points before its start, then those before its finish.',
  })
  holdPoints(@Ctx() ctx: Context, @Parent() phase: PhaseRow) {
    return this.points.ofPhase(ctx, phase.id);
  }
}
