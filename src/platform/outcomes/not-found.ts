import { Field, ObjectType } from '@nestjs/graphql';
import { Refusal } from './refusal.js';

/** A row that does not exist, or that belongs to another company: the two answer alike. */
@ObjectType({ implements: () => [Refusal], description: 'No such row in this company.' })
export class NotFound extends Refusal {
  override readonly code = 'NotFound';
  override readonly message: string;

  @Field(() => String, { description: 'What was looked for: job, phase, hold point, ...' })
  readonly what: string;

  constructor(what: string) {
    super();
    this.what = what;
    this.message = `There is no such ${what}. It may have been removed; reload and try again.`;
  }
}
