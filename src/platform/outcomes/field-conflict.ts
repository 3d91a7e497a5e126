import { Field, GraphQLISODateTime, Int, ObjectType } from '@nestjs/graphql';
import { Refusal } from './refusal.js';

/** Both values of a field, in words, and whose the other one is. */
export interface BothValues {
  /** What the field is of and what it is: "start of Dig". */
  readonly field: string;
  readonly theirs: string;
  readonly mine: string;
  /** The value that stands, as `seen` takes it to set the own value over it. */
  readonly standing: string | null;
  readonly changedBy: string | null;
  readonly changedAt: Date | null;
  readonly currentRevision: number;
}

/** Somebody else set the same field to another value since the caller read it: a person has to choose. */
@ObjectType({
  implements: () => [Refusal],
  description:
    'The same field was set to another value since it was read; nothing was written. Show both, and to keep the own value send it anew with `seen` as `standing`.',
})
export class FieldConflict extends Refusal implements BothValues {
  override readonly code = 'FieldConflict';
  override readonly message: string;

  @Field(() => String, { description: 'Which field: "start of Dig".' })
  readonly field!: string;

  @Field(() => String, { description: 'The value that stands, in words.' })
  readonly theirs!: string;

  @Field(() => String, { description: 'The value that was sent, in words.' })
  readonly mine!: string;

  @Field(() => String, { nullable: true, description: 'The value that stands, as `seen` takes it.' })
  readonly standing!: string | null;

  @Field(() => String, { nullable: true, description: 'Who set the value that stands, where that is known.' })
  readonly changedBy!: string | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was set.' })
  readonly changedAt!: Date | null;

  @Field(() => Int, { description: 'The revision the row has now.' })
  readonly currentRevision!: number;

  constructor(both: BothValues) {
    super();
    Object.assign(this, both);
    const whose = both.changedBy ? ` (${both.changedBy})` : '';
    this.message = `The ${both.field} was changed in the meantime: it is now ${both.theirs}${whose}; yours is ${both.mine}. Choose one of the two.`;
  }
}
