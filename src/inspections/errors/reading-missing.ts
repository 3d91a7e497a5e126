import { Field, ObjectType } from '@nestjs/graphql';
import { ReadingStage } from '../reading-stage.js';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** No accepted reading of the heating set stands for this stage. */
@ObjectType({
  implements: () => [Refusal],
  description: 'No accepted reading of the heating set stands for this stage.',
})
export class ReadingMissing extends Refusal {
  override readonly code = 'ReadingMissing';
  override readonly message: string;

  @Field(() => ReadingStage, { description: 'Stage of the reading that is missing.' })
  readonly stage: ReadingStage;

  constructor(
    readonly heatingSetId: string,
    stage: ReadingStage,
    readonly areaId: string | null,
    message: string,
  ) {
    super();
    this.stage = stage;
    this.message = message;
  }
}
