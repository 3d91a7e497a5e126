import { Field, Float, ObjectType } from '@nestjs/graphql';
import { Finding } from '../finding.model.js';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** What was placed is not measured to be strong enough. */
@ObjectType({
  implements: () => [Refusal],
  description: 'What was placed is not measured to be strong enough yet.',
})
export class CureNotReached extends Refusal {
  override readonly code = 'CureNotReached';

  @Field(() => Float, {
    nullable: true,
    description: 'Strength by the measured temperatures, psi; null without any.',
  })
  readonly strengthPsi: number | null;

  @Field(() => Float, { description: 'Strength it must reach, psi.' })
  readonly requiredPsi: number;

  @Field(() => Finding, {
    nullable: true,
    description: 'The strength with its method, source and caution; null where nothing was placed.',
  })
  readonly finding: Finding | null;

  constructor(
    strengthPsi: number | null,
    requiredPsi: number,
    finding: Finding | null,
    override readonly message: string,
  ) {
    super();
    this.strengthPsi = strengthPsi;
    this.requiredPsi = requiredPsi;
    this.finding = finding;
  }
}
