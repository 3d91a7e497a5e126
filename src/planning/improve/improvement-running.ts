import { Field, ID, ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** A company searches once at a time. */
@ObjectType({ implements: () => [Refusal], description: 'A search is at work already.' })
export class ImprovementRunning extends Refusal {
  override readonly code = 'ImprovementRunning';
  override readonly message =
    'A search for a better plan is at work already. Wait until it has ended, or stop it, then start another.';

  constructor(improvementId: string) {
    super();
    this.improvementId = improvementId;
  }

  @Field(() => ID, { description: 'The one at work.' })
  readonly improvementId: string;
}
