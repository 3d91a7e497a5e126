import { ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** A hold point of this gate is not released. */
@ObjectType({ implements: () => [Refusal], description: 'A hold point of this gate is not released.' })
export class HoldPointOpen extends Refusal {
  override readonly code = 'HoldPointOpen';

  constructor(
    readonly holdPointIds: readonly string[],
    override readonly message: string,
  ) {
    super();
  }
}
