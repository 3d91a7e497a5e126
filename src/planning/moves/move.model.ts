import { Field, GraphQLISODateTime, ID, Int, ObjectType } from '@nestjs/graphql';
import { MoveWay, ProposedMoveState } from '../../generated/prisma/enums.js';
import './move-enums.js';

/** Another start for one phase, tried by the office. */
@ObjectType({
  description: 'Another start for one phase, tried by the office: it waits as a proposal.',
})
export class ProposedMove {
  @Field(() => ID, { description: 'Id of the move.' })
  readonly id!: string;

  @Field(() => MoveWay, { description: 'How the start is meant.' })
  readonly way!: MoveWay;

  @Field(() => GraphQLISODateTime, { description: 'The start that was asked for.' })
  readonly startAt!: Date;

  @Field(() => ProposedMoveState, { description: 'What has become of it.' })
  readonly state!: ProposedMoveState;

  @Field(() => GraphQLISODateTime, { description: 'When it was asked for.' })
  readonly askedAt!: Date;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was decided or ended.' })
  readonly endedAt!: Date | null;

  @Field(() => String, { nullable: true, description: 'Why it ended, where nobody has decided it.' })
  readonly message!: string | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;

  readonly phaseId!: string;
  readonly crewId!: string | null;
}

/** What asking for a move gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The move as it now stands.' })
export class MoveProposed {
  readonly moveId!: string;
}
