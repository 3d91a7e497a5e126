import { Field, ID, InputType, Int } from '@nestjs/graphql';
import { z } from 'zod';
import { clientKey, KeyedInput } from '../../platform/graphql/client-key.js';

@InputType({ description: 'Registers a temperature logger, for one placement or for a site.' })
export class RegisterLoggerInput extends KeyedInput {
  @Field(() => ID, { description: 'The site it stands at.' })
  readonly siteId!: string;

  @Field(() => ID, {
    nullable: true,
    description:
      'The placement it sits in; left out, it may post for every placement of the site and names the placement with each reading.',
  })
  readonly placementId?: string | null;

  @Field(() => String, { description: 'Name people know it by.' })
  readonly name!: string;
}

@InputType({ description: 'Revokes the token of a logger; what it posted stays.' })
export class RevokeLoggerInput extends KeyedInput {
  @Field(() => ID, { description: 'The logger.' })
  readonly loggerId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision it was read at; checked when given.' })
  readonly revision?: number | null;
}

/** Schema of a logger. */
export const loggerSchema = z.object({
  clientKey,
  name: z
    .string()
    .trim()
    .min(1, { error: 'must be a name people know it by' })
    .max(80, { error: 'has at most 80 letters' }),
});
