import { Args, Mutation, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { HoldPoint } from '../hold-point.model.js';
import { HoldPointReader } from '../hold-point-reader.js';
import { DecideHoldPointInput } from './decide.inputs.js';
import { DecideHoldPointOutcome, HoldPointSettled } from './decide.outcomes.js';
import { DecideService } from './decide.service.js';

@Resolver(() => HoldPointSettled)
export class DecideResolver {
  constructor(
    private readonly service: DecideService,
    private readonly reader: HoldPointReader,
  ) {}

  @ResolveField(() => HoldPoint, { description: 'The hold point as it now stands.' })
  holdPoint(@Ctx() ctx: Context, @Parent() { holdPointId }: HoldPointSettled) {
    return this.reader.byId(ctx, holdPointId);
  }

  @Mutation(() => DecideHoldPointOutcome, {
    description: 'Decides a hold point, unless somebody else decided it otherwise meanwhile.',
  })
  @Allow('office', 'foreman')
  decideHoldPoint(
    @Ctx() ctx: Context,
    @Args('input', { description: 'The decision, and the state it was made on.' })
    input: DecideHoldPointInput,
  ) {
    return this.service.decide(ctx, input);
  }
}
