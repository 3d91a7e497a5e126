import { ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** The proposal is no longer the open one. */
@ObjectType({
  implements: () => [Refusal],
  description: 'The proposal was decided already, or the plan has moved on since.',
})
export class ProposalOutdated extends Refusal {
  override readonly code = 'ProposalOutdated';
  override readonly message =
    'This proposal no longer fits: it was decided already or the plan has moved on. Look at the open proposal, if there is one, and decide that.';
}
