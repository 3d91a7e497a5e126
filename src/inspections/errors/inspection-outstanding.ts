import { ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** An inspection by the authority has not passed. */
@ObjectType({ implements: () => [Refusal], description: 'An inspection by the authority has not passed.' })
export class InspectionOutstanding extends Refusal {
  override readonly code = 'InspectionOutstanding';

  constructor(
    readonly inspectionIds: readonly string[],
    override readonly message: string,
  ) {
    super();
  }
}
