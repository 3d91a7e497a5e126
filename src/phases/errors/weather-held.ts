import { ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** The weather forbids this work now. */
@ObjectType({ implements: () => [Refusal], description: 'The weather forbids this work now.' })
export class WeatherHeld extends Refusal {
  override readonly code = 'WeatherHeld';

  constructor(
    readonly holdIds: readonly string[],
    override readonly message: string,
  ) {
    super();
  }
}
