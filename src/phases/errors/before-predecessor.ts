import { ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** The time lies before what a predecessor allows. */
@ObjectType({
  implements: () => [Refusal],
  description: 'The time lies before what a predecessor allows.',
})
export class BeforePredecessor extends Refusal {
  override readonly code = 'BeforePredecessor';

  constructor(
    readonly phaseIds: readonly string[],
    override readonly message: string,
  ) {
    super();
  }
}
