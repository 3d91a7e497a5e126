import { Field, GraphQLISODateTime, Int, ObjectType } from '@nestjs/graphql';

/** A stretch of work. */
@ObjectType({ description: 'A stretch of work: closed hours and weather holds are left out.' })
export class Segment {
  @Field(() => GraphQLISODateTime, { description: 'First moment of the stretch.' })
  readonly from!: Date;

  @Field(() => GraphQLISODateTime, { description: 'End of the stretch, not part of it.' })
  readonly to!: Date;
}

/** Where the current plan has a phase, and why. */
@ObjectType({ description: 'Where the current plan has a phase, and why.' })
export class PlannedPhase {
  @Field(() => GraphQLISODateTime, { description: 'When it starts, or has started.' })
  readonly startAt!: Date;

  @Field(() => GraphQLISODateTime, { description: 'When it finishes, or has finished.' })
  readonly finishAt!: Date;

  @Field(() => Int, {
    description: 'Minutes of its own open time it can slip before its job finishes later.',
  })
  readonly totalFloatMinutes!: number;

  @Field(() => Int, {
    description: 'Minutes of its own open time it can slip before any phase after it moves.',
  })
  readonly freeFloatMinutes!: number;

  @Field(() => Boolean, { description: 'Whether its job finishes later if it slips at all.' })
  readonly critical!: boolean;

  @Field(() => Boolean, {
    description: 'Whether any of it lies beyond the forecast: the weather there is unknown, not fair.',
  })
  readonly weatherUnknown!: boolean;
}
