import { Field, ID, InputType } from '@nestjs/graphql';
import { z } from 'zod';

/** Base of every mutation input. */
@InputType({ isAbstract: true })
export abstract class KeyedInput {
  @Field(() => ID, {
    description:
      'A new UUID for each change; repeat it to retry the same change. A repeated key has one effect and one answer.',
  })
  readonly clientKey!: string;

  @Field(() => Boolean, {
    nullable: true,
    description:
      'Sent by an outbox, which repeats by itself and tells times by its own clock. A refusal is then kept under the key as well, so a late copy stays refused; a time up to five minutes ahead counts as now.',
  })
  readonly fromOutbox?: boolean | null;
}

/** Schema of a client key, for `parseInput`. */
export const clientKey = z.uuid({ error: 'must be a UUID made for this change' });
