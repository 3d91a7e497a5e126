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
}

/** Schema of a client key, for `parseInput`. */
export const clientKey = z.uuid({ error: 'must be a UUID made for this change' });
