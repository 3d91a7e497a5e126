import { Field, GraphQLISODateTime, Int, ObjectType, Query, Resolver } from '@nestjs/graphql';
import { SLOT_MINUTES } from '../../../shared/schedule/slot.js';
import type { Context } from '../../platform/context.js';
import { Ctx } from '../../platform/graphql/request-context.js';
import { CompanyPlanner } from './company-plan.js';

/** Text longer than this is not handed out: a page could do nothing in time with what it says. */
const MOST_CHARACTERS = 4_000_000;

/** What the planning engine plans, for a page that previews a change with the same engine. */
@ObjectType({
  description: 'What the planning engine plans, for a page that previews a change with the same engine.',
})
export class PlanningInput {
  @Field(() => Int, { description: 'Number of the plan in force.' })
  readonly planNumber!: number;

  @Field(() => GraphQLISODateTime, { description: 'The instant of slot 0.' })
  readonly startsAt!: Date;

  @Field(() => Int, { description: 'Minutes of a slot.' })
  readonly slotMinutes!: number;

  @Field(() => String, {
    nullable: true,
    description:
      'The input as JSON, in slots and ids; null for a company whose input is too large to hand out.',
  })
  readonly json!: string | null;
}

@Resolver()
export class PlanInputResolver {
  constructor(private readonly planner: CompanyPlanner) {}

  @Query(() => PlanningInput, {
    description: 'What the planning engine plans now, for previews in the page; nothing is written.',
  })
  async planInput(@Ctx() ctx: Context): Promise<PlanningInput> {
    const { frame, planned, rows } = await this.planner.plan(ctx);
    const json = JSON.stringify(planned);
    return {
      planNumber: rows.company.planNumber,
      startsAt: new Date(frame.startMs),
      slotMinutes: SLOT_MINUTES,
      json: json.length > MOST_CHARACTERS ? null : json,
    };
  }
}
