import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import { Crew, CrewReader, EquipmentPool, EquipmentReader } from '../crews/crews.face.js';
import { Phase, PhaseReader } from '../jobs/jobs.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { BeforePredecessor } from './errors/before-predecessor.js';
import { CrewBusy } from './errors/crew-busy.js';
import { EquipmentOut } from './errors/equipment-out.js';
import { PredecessorUnfinished } from './errors/predecessor-unfinished.js';

@Resolver(() => PredecessorUnfinished)
export class PredecessorUnfinishedResolver {
  constructor(private readonly reader: PhaseReader) {}

  @ResolveField(() => [Phase], { description: 'The phases that must come first.' })
  phases(@Ctx() ctx: Context, @Parent() { phaseIds }: PredecessorUnfinished) {
    return this.reader.byIds(ctx, phaseIds);
  }
}

@Resolver(() => BeforePredecessor)
export class BeforePredecessorResolver {
  constructor(private readonly reader: PhaseReader) {}

  @ResolveField(() => [Phase], { description: 'The phases that allow it only later.' })
  phases(@Ctx() ctx: Context, @Parent() { phaseIds }: BeforePredecessor) {
    return this.reader.byIds(ctx, phaseIds);
  }
}

@Resolver(() => CrewBusy)
export class CrewBusyResolver {
  constructor(
    private readonly crews: CrewReader,
    private readonly phases: PhaseReader,
  ) {}

  @ResolveField(() => Crew, { nullable: true, description: 'The crew that is busy.' })
  crew(@Ctx() ctx: Context, @Parent() { crewId }: CrewBusy) {
    return this.crews.byId(ctx, crewId);
  }

  @ResolveField(() => Phase, { nullable: true, description: 'The phase that keeps it.' })
  phase(@Ctx() ctx: Context, @Parent() { phaseId }: CrewBusy) {
    return this.phases.byId(ctx, phaseId);
  }
}

@Resolver(() => EquipmentOut)
export class EquipmentOutResolver {
  constructor(
    private readonly equipment: EquipmentReader,
    private readonly phases: PhaseReader,
  ) {}

  @ResolveField(() => EquipmentPool, { nullable: true, description: 'The equipment that is out.' })
  pool(@Ctx() ctx: Context, @Parent() { poolId }: EquipmentOut) {
    return this.equipment.byId(ctx, poolId);
  }

  @ResolveField(() => Phase, { nullable: true, description: 'The phase that keeps most of it.' })
  phase(@Ctx() ctx: Context, @Parent() { phaseId }: EquipmentOut) {
    return this.phases.byId(ctx, phaseId);
  }
}
