import { Args, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { EquipmentChanged, SetEquipmentOutcome } from './crews.outcomes.js';
import { SetEquipmentInput } from './equipment.inputs.js';
import { EquipmentPool } from './equipment-pool.model.js';
import { EquipmentReader } from './equipment-reader.js';
import { EquipmentService } from './equipment.service.js';

@Resolver(() => EquipmentChanged)
export class EquipmentResolver {
  constructor(
    private readonly reader: EquipmentReader,
    private readonly equipment: EquipmentService,
  ) {}

  @Query(() => [EquipmentPool], { description: 'The equipment of the company by kind.' })
  equipmentPools(@Ctx() ctx: Context) {
    return this.reader.list(ctx);
  }

  @Mutation(() => SetEquipmentOutcome, { description: 'Says how much of a kind of equipment there is.' })
  @Allow('office')
  setEquipment(
    @Ctx() ctx: Context,
    @Args('input', { description: 'What is asked for.' }) input: SetEquipmentInput,
  ) {
    return this.equipment.set(ctx, input);
  }

  @ResolveField(() => EquipmentPool, { description: 'The equipment.' })
  pool(@Ctx() ctx: Context, @Parent() done: EquipmentChanged) {
    return this.reader.byId(ctx, done.poolId);
  }
}
