import { ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** An acceptance that can no longer be undone. */
@ObjectType({
  implements: () => [Refusal],
  description: 'The acceptance of the proposal cannot be undone, or not any more; the message says why.',
})
export class UndoRefused extends Refusal {
  override readonly code = 'UndoRefused';
  override readonly message: string;

  constructor(message: string) {
    super();
    this.message = message;
  }
}
