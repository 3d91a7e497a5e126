import { Field, Float, GraphQLISODateTime, ID, Int, ObjectType } from '@nestjs/graphql';
import { ImprovementState } from '../../generated/prisma/enums.js';
import { connectionType } from '../../platform/graphql/page.js';
import './improvement-enums.js';

/** What a plan costs, part by part; lower is better. */
@ObjectType({ description: 'What a plan costs, part by part; lower is better.' })
export class PlanCost {
  @Field(() => Float, {
    description: 'Hours past due dates, all jobs together; those of lower priority count less.',
  })
  readonly latenessHours!: number;

  @Field(() => Float, { description: 'Hours from now to the finish, all jobs together.' })
  readonly finishHours!: number;

  @Field(() => Float, {
    description: 'Hours by which starts leave their promises; another crew counts as a day.',
  })
  readonly disturbanceHours!: number;

  @Field(() => Int, { description: 'How often a crew goes on at another site.' })
  readonly crewMoves!: number;

  @Field(() => Int, { description: 'Phases without a place.' })
  readonly unplanned!: number;

  @Field(() => Float, { description: 'All parts together as weighted; only good for comparing plans.' })
  readonly total!: number;
}

/** What a search has found, against the plan in force. */
@ObjectType({ description: 'What a search has found, against the plan in force.' })
export class ImprovementOutcome {
  @Field(() => PlanCost, { description: 'The plan in force.' })
  readonly before!: PlanCost;

  @Field(() => PlanCost, { description: 'The plan that is offered.' })
  readonly after!: PlanCost;

  @Field(() => Float, {
    nullable: true,
    description:
      'The offered plan costs at most so many percent more than any plan can; null when no bound is known, or facts have moved since.',
  })
  readonly withinPercent!: number | null;

  @Field(() => Boolean, { description: 'True only when it is proved that no plan is better.' })
  readonly proved!: boolean;

  @Field(() => Boolean, {
    description: 'Whether facts have moved since the search began, so that it was planned anew.',
  })
  readonly factsMoved!: boolean;
}

/** How far a search is. */
@ObjectType({ description: 'How far a search is.' })
export class ImprovementProgress {
  @Field(() => Float, { description: 'What the best plan so far costs.' })
  readonly total!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'It costs at most so many percent more than any plan can; null when no bound is known.',
  })
  readonly withinPercent!: number | null;

  @Field(() => Float, { description: 'Seconds searched.' })
  readonly seconds!: number;
}

/** A search for a better plan. */
@ObjectType({
  description: 'A search for a better plan. It never changes the plan by itself: it ends as a proposal.',
})
export class Improvement {
  @Field(() => ID, { description: 'Id of the search.' })
  readonly id!: string;

  @Field(() => ImprovementState, { description: 'What has become of it.' })
  readonly state!: ImprovementState;

  @Field(() => Int, { description: 'How many seconds it may search.' })
  readonly seconds!: number;

  @Field(() => Int, { description: 'Plans made so far.' })
  readonly schedules!: number;

  @Field(() => GraphQLISODateTime, { description: 'When it was asked for.' })
  readonly askedAt!: Date;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When a worker began it; null while it waits.',
  })
  readonly startedAt!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When the search ended.' })
  readonly endedAt!: Date | null;

  @Field(() => Boolean, { description: 'Whether somebody has asked it to stop.' })
  readonly stopping!: boolean;

  @Field(() => String, { nullable: true, description: 'Why it failed, or ended without a proposal.' })
  readonly message!: string | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}

/** A page of searches. */
export const ImprovementConnection = connectionType('Improvement', Improvement);

/** What asking for a search, or stopping one, gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The search as it now stands.' })
export class ImprovementChanged {
  readonly improvementId!: string;
}
