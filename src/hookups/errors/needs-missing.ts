import { Field, ObjectType } from '@nestjs/graphql';
import { Refusal } from '../../platform/outcomes/refusal.js';
import { Need } from '../need.model.js';

/** Needs are not met yet. */
@ObjectType({ implements: () => [Refusal], description: 'Needs are not met yet.' })
export class NeedsMissing extends Refusal {
  override readonly code = 'NeedsMissing';
  override readonly message: string;

  @Field(() => [Need], { description: 'All needs, the met ones too.' })
  readonly needs: Need[];

  constructor(needs: readonly Need[], what: string) {
    super();
    this.needs = [...needs];
    const missing = needs.filter(({ met }) => !met).map(({ text }) => text);
    this.message = `${what} is not possible yet: ${missing.join(' ')}`;
  }
}
