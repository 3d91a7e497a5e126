import { ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** This hold point can never be waived. */
@ObjectType({ implements: () => [Refusal], description: 'This hold point can never be waived.' })
export class NotWaivable extends Refusal {
  override readonly code = 'NotWaivable';

  constructor(override readonly message: string) {
    super();
  }
}
