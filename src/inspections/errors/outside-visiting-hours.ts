import { Field, GraphQLISODateTime, ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';

/** The authority does not visit then. */
@ObjectType({ implements: () => [Refusal], description: 'The authority does not visit then.' })
export class OutsideVisitingHours extends Refusal {
  override readonly code = 'OutsideVisitingHours';

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description:
      'Begin of the next time that is long enough; null when there is none in the next two months.',
  })
  readonly nextWindow: Date | null;

  constructor(
    nextWindow: Date | null,
    override readonly message: string,
  ) {
    super();
    this.nextWindow = nextWindow;
  }
}
