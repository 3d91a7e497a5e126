import { Args, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { CureAlarm as AlarmRow, Placement as PlacementRow } from '../../generated/prisma/client.js';
import { Finding } from '../../inspections/inspections.face.js';
import type { Context } from '../../platform/context.js';
import { Ctx } from '../../platform/graphql/request-context.js';
import { Placement } from '../placement.model.js';
import { AlarmReader } from './alarm-reader.js';
import { CureAlarm } from './cure-alarm.model.js';

const STANDING = {
  type: () => Boolean,
  defaultValue: true,
  description: 'Whether alarms that hold no longer are left out.',
};

@Resolver(() => CureAlarm)
export class CureAlarmResolver {
  @ResolveField(() => Finding, { description: 'What was found, with its limit, source and what to do.' })
  finding(@Parent() row: AlarmRow): Finding {
    return row.finding as unknown as Finding;
  }
}

@Resolver(() => Placement)
export class PlacementAlarmsResolver {
  constructor(private readonly reader: AlarmReader) {}

  @ResolveField(() => [CureAlarm], { description: 'What must be minded there, the most urgent first.' })
  alarms(
    @Ctx() ctx: Context,
    @Parent() row: PlacementRow,
    @Args('standingOnly', STANDING) standingOnly: boolean,
  ) {
    return this.reader.ofPlacement(ctx, row.id, standingOnly);
  }
}
