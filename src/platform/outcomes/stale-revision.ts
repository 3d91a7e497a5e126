import { Field, Int, ObjectType } from '@nestjs/graphql';
import { Refusal } from './refusal.js';

/** Somebody changed the row since the caller read it. */
@ObjectType({
  implements: () => [Refusal],
  description: 'The row was changed by somebody else since it was read.',
})
export class StaleRevision extends Refusal {
  override readonly code = 'StaleRevision';
  override readonly message: string;

  @Field(() => Int, { description: 'The revision the row has now.' })
  readonly currentRevision: number;

  constructor(what: string, currentRevision: number) {
    super();
    this.currentRevision = currentRevision;
    this.message = `This ${what} was changed by somebody else in the meantime. Look at it again and repeat the change if it still holds.`;
  }
}
