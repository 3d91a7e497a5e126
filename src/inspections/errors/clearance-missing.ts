import { ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** A clearance is missing, or has lapsed. */
@ObjectType({ implements: () => [Refusal], description: 'A clearance is missing, or has lapsed.' })
export class ClearanceMissing extends Refusal {
  override readonly code = 'ClearanceMissing';

  constructor(
    readonly clearanceIds: readonly string[],
    override readonly message: string,
  ) {
    super();
  }
}
