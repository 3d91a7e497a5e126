import { ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** A phase that must come first is not far enough. */
@ObjectType({ implements: () => [Refusal], description: 'A phase that must come first is not far enough.' })
export class PredecessorUnfinished extends Refusal {
  override readonly code = 'PredecessorUnfinished';

  constructor(
    readonly phaseIds: readonly string[],
    override readonly message: string,
  ) {
    super();
  }
}
