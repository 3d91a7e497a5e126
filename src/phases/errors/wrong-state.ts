import { Field, ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** The row is in a state in which this cannot be done: finishing what was not started. */
@ObjectType({
  implements: () => [Refusal],
  description: 'The row is in a state in which this cannot be done.',
})
export class WrongState extends Refusal {
  override readonly code = 'WrongState';

  constructor(
    state: string,
    override readonly message: string,
  ) {
    super();
    this.state = state;
  }

  @Field(() => String, { description: 'The state it is in.' })
  readonly state: string;
}
