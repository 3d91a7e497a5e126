import { Args, Mutation, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import { protectionOff } from '../../../shared/cure/alarms/protection-may-come-off.js';
import { epochMs } from '../../../shared/units/time.js';
import type { Placement as PlacementRow } from '../../generated/prisma/client.js';
import { Finding, findingOf } from '../../inspections/inspections.face.js';
import { Clock } from '../../platform/clock/clock.js';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { Placement } from '../placement.model.js';
import { PlacementReader } from '../placement-reader.js';
import { protectionSpecOf } from '../stored-placement.js';
import { ChangeProtectionInput, TakeProtectionOffInput } from './change-protection.inputs.js';
import { Protection, protectionModel } from './protection.model.js';
import { ChangeProtectionOutcome, TakeProtectionOffOutcome } from './protection.outcomes.js';
import { ProtectionService } from './protection.service.js';

const INPUT = { description: 'Which placement, and how it is kept warm.' };

@Resolver(() => Placement)
export class PlacementProtectionResolver {
  constructor(
    private readonly reader: PlacementReader,
    private readonly service: ProtectionService,
    private readonly clock: Clock,
  ) {}

  @ResolveField(() => Protection, { description: 'How it is, or was, kept warm.' })
  protectionPlan(@Parent() row: PlacementRow): Protection {
    return protectionModel(protectionSpecOf(row));
  }

  @ResolveField(() => Finding, {
    nullable: true,
    description: 'Whether its protection may come off, and what is in the way; null when nothing is on it.',
  })
  async protectionOff(@Ctx() ctx: Context, @Parent() row: PlacementRow): Promise<Finding | null> {
    const [request, prediction] = await Promise.all([
      this.reader.request(ctx, row),
      this.reader.prediction(ctx, row),
    ]);
    const finding = protectionOff({ request, prediction, now: epochMs(this.clock.now().getTime()) });
    return finding && findingOf(finding);
  }

  @Mutation(() => ChangeProtectionOutcome, {
    description: 'Changes how a placement is kept warm, from now on.',
  })
  @Allow('office', 'foreman')
  changeProtection(@Ctx() ctx: Context, @Args('input', INPUT) input: ChangeProtectionInput) {
    return this.service.change(ctx, input);
  }

  @Mutation(() => TakeProtectionOffOutcome, {
    description: 'Records that the protection of a placement was taken off, when the rules say that it may.',
  })
  @Allow('office', 'foreman')
  takeProtectionOff(@Ctx() ctx: Context, @Args('input', INPUT) input: TakeProtectionOffInput) {
    return this.service.takeOff(ctx, input);
  }
}
