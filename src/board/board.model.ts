import { Field, GraphQLISODateTime, Int, ObjectType } from '@nestjs/graphql';

/** Everything the schedule board shows for a stretch of days. */
@ObjectType({ description: 'Everything the schedule board shows for a stretch of days.' })
export class Board {
  @Field(() => GraphQLISODateTime, { description: 'First moment of the stretch.' })
  readonly from!: Date;

  @Field(() => GraphQLISODateTime, { description: 'End of the stretch, not part of it.' })
  readonly to!: Date;

  @Field(() => Int, { description: 'Number of the plan shown.' })
  readonly planNumber!: number;

  @Field(() => String, {
    description:
      'Number of the newest change shown; ask for changes since this number after a lost connection.',
  })
  readonly changeNumber!: string;

  @Field(() => GraphQLISODateTime, { description: 'The present, by the clock of the service.' })
  readonly now!: Date;
}
