import { Field, GraphQLISODateTime, ID, InputType, Int } from '@nestjs/graphql';
import { MoveWay } from '../../generated/prisma/enums.js';
import { KeyedInput } from '../../platform/graphql/client-key.js';
import './move-enums.js';

/** Another start for a phase. */
@InputType({
  description: 'Another start for a phase that has not begun, to be proposed beside the plan in force.',
})
export class ProposeMoveInput extends KeyedInput {
  @Field(() => ID, { description: 'The phase.' })
  readonly phaseId!: string;

  @Field(() => GraphQLISODateTime, { description: 'The start, on a quarter of an hour.' })
  readonly startAt!: Date;

  @Field(() => MoveWay, {
    defaultValue: 'notBefore',
    description: 'Whether it starts no earlier than then, or then and not otherwise.',
  })
  readonly way!: MoveWay;

  @Field(() => ID, {
    nullable: true,
    description: 'The crew that is to do it; left out for the one it has, or the choice of the plan.',
  })
  readonly crewId?: string | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Revision of the phase that was read; checked when given.',
  })
  readonly revision?: number | null;
}
