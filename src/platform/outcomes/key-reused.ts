import { ObjectType } from '@nestjs/graphql';
import { Refusal } from './refusal.js';

/** A client key came back with another input. */
@ObjectType({
  implements: () => [Refusal],
  description: 'The client key was used before with a different input.',
})
export class KeyReused extends Refusal {
  override readonly code = 'KeyReused';
  override readonly message =
    'This client key was used before for a different change. Make a new key for a new change; repeat a key only to retry the same one.';
}
