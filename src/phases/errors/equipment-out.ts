import { ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** The company's equipment of that kind is out elsewhere. */
@ObjectType({
  implements: () => [Refusal],
  description: 'Not enough of a kind of equipment is free: the rest is out at other phases.',
})
export class EquipmentOut extends Refusal {
  override readonly code = 'EquipmentOut';

  constructor(
    readonly poolId: string,
    /** The phase that keeps most of it; null when the company simply owns too little. */
    readonly phaseId: string | null,
    override readonly message: string,
  ) {
    super();
  }
}
