import { Field, ObjectType } from '@nestjs/graphql';
import { Finding } from '../../inspections/inspections.face.js';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** The design breaks a rule that this phase waits for. */
@ObjectType({
  implements: () => [Refusal],
  description: 'The design of the job breaks a rule that this phase waits for.',
})
export class DesignBroken extends Refusal {
  override readonly code = 'DesignBroken';

  @Field(() => [Finding], { description: 'The broken rules, each with value, limit and source.' })
  readonly findings: Finding[];

  constructor(
    findings: readonly Finding[],
    override readonly message: string,
  ) {
    super();
    this.findings = [...findings];
  }
}
