import { Field, GraphQLISODateTime, ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** The authority asks for more notice. */
@ObjectType({ implements: () => [Refusal], description: 'The authority asks for more notice than that.' })
export class NoticeTooShort extends Refusal {
  override readonly code = 'NoticeTooShort';

  @Field(() => GraphQLISODateTime, {
    description: 'Earliest visit that keeps the notice and the visiting hours.',
  })
  readonly earliest: Date;

  constructor(
    earliest: Date,
    override readonly message: string,
  ) {
    super();
    this.earliest = earliest;
  }
}
