import { Field, ID, InputType, Int } from '@nestjs/graphql';
import { KeyedInput } from '../../platform/graphql/client-key.js';

/** A proposal to accept. */
@InputType({ description: 'A proposal to accept: the commitments move as it says.' })
export class AcceptProposalInput extends KeyedInput {
  @Field(() => ID, { description: 'The proposal.' })
  readonly proposalId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;
}

/** A proposal to drop. */
@InputType({ description: 'A proposal to drop: the commitments stay as they are.' })
export class DropProposalInput extends KeyedInput {
  @Field(() => ID, { description: 'The proposal.' })
  readonly proposalId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;
}

/** An acceptance to take back. */
@InputType({
  description: 'An acceptance to take back: what it replaced is set and promised again, and told again.',
})
export class UndoProposalInput extends KeyedInput {
  @Field(() => ID, { description: 'The accepted proposal.' })
  readonly proposalId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;
}
