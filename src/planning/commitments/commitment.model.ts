import { Field, GraphQLISODateTime, ID, ObjectType } from '@nestjs/graphql';
import { CommitmentState } from '../../generated/prisma/enums.js';
import '../plan-enums.js';

/** Dates told to people; they do not move by themselves. */
@ObjectType({ description: 'Dates told to people; they do not move by themselves.' })
export class Commitment {
  @Field(() => ID, { description: 'Id of the commitment.' })
  readonly id!: string;

  @Field(() => GraphQLISODateTime, { description: 'Promised start.' })
  readonly startAt!: Date;

  @Field(() => GraphQLISODateTime, { description: 'Promised finish.' })
  readonly finishAt!: Date;

  @Field(() => CommitmentState, { description: 'Whether it stands.' })
  readonly state!: CommitmentState;

  @Field(() => GraphQLISODateTime, { description: 'When it was made.' })
  readonly madeAt!: Date;
}

/** What committing, or taking back, gives; the rows are loaded when they are asked for. */
@ObjectType({ description: 'The commitments that were made, or taken back.' })
export class CommitmentChanged {
  readonly commitmentIds!: string[];
}
