import { Args, ID, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { Crew, CrewReader } from '../crews/crews.face.js';
import type { Phase as PhaseRow } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Area } from './area.model.js';
import { Job } from './job.model.js';
import { JobReader } from './job-reader.js';
import { Link } from './link.model.js';
import { Phase } from './phase.model.js';
import { PhaseReader } from './phase-reader.js';

@Resolver(() => Phase)
export class PhaseFieldsResolver {
  constructor(
    private readonly reader: PhaseReader,
    private readonly jobReader: JobReader,
    private readonly crewReader: CrewReader,
  ) {}

  @Query(() => Phase, { nullable: true, description: 'One phase; null when there is none of that id.' })
  phase(@Ctx() ctx: Context, @Args('id', { type: () => ID, description: 'Id of the phase.' }) id: string) {
    return this.reader.byId(ctx, id);
  }

  @ResolveField(() => Job, { description: 'The job it belongs to.' })
  job(@Ctx() ctx: Context, @Parent() phase: PhaseRow) {
    return this.jobReader.byId(ctx, phase.jobId);
  }

  @ResolveField(() => Area, {
    nullable: true,
    description: 'The area it is done at; null for the whole job.',
  })
  area(@Ctx() ctx: Context, @Parent() phase: PhaseRow) {
    return this.jobReader.areaById(ctx, phase.areaId);
  }

  @ResolveField(() => Crew, { nullable: true, description: 'The crew that must do it, fixed by the office.' })
  requiredCrew(@Ctx() ctx: Context, @Parent() phase: PhaseRow) {
    return this.crewReader.byId(ctx, phase.requiredCrewId);
  }

  @ResolveField(() => Crew, { nullable: true, description: 'The crew that does or did it.' })
  actualCrew(@Ctx() ctx: Context, @Parent() phase: PhaseRow) {
    return this.crewReader.byId(ctx, phase.actualCrewId);
  }

  @ResolveField(() => [Link], { description: 'The links it waits by.' })
  linksIn(@Ctx() ctx: Context, @Parent() phase: PhaseRow) {
    return this.reader.linksInto(ctx, phase.id);
  }

  @ResolveField(() => [Link], { description: 'The links by which others wait for it.' })
  linksOut(@Ctx() ctx: Context, @Parent() phase: PhaseRow) {
    return this.reader.linksOutOf(ctx, phase.id);
  }
}
