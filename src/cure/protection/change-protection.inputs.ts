import { Field, GraphQLISODateTime, ID, InputType, Int } from '@nestjs/graphql';
import { z } from 'zod';
import { clientKey, KeyedInput } from '../../platform/graphql/client-key.js';
import { ProtectionInput, protectionSchema } from './protection.input.js';

@InputType({ description: 'Changes how a placement is kept warm, from now on.' })
export class ChangeProtectionInput extends KeyedInput {
  @Field(() => ID, { description: 'The placement.' })
  readonly placementId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision it was read at; checked when given.' })
  readonly revision?: number | null;

  @Field(() => ProtectionInput, { description: 'How it is kept warm now; hours still count from placing.' })
  readonly protectionPlan!: ProtectionInput;
}

@InputType({
  description: 'Records that the protection of a placement was taken off; its equipment is free then.',
})
export class TakeProtectionOffInput extends KeyedInput {
  @Field(() => ID, { description: 'The placement.' })
  readonly placementId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision it was read at; checked when given.' })
  readonly revision?: number | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it came off; now when left out.' })
  readonly at?: Date | null;

  @Field(() => String, {
    nullable: true,
    description: 'Why it comes off although the rules say it must stay; only the office may say so.',
  })
  readonly reason?: string | null;
}

/** Schema of a changed protection. */
export const changeProtectionSchema = z.object({ clientKey, protectionPlan: protectionSchema });

/** Schema of a removal. */
export const takeOffSchema = z.object({
  clientKey,
  at: z.date().nullish(),
  reason: z
    .string()
    .trim()
    .min(3, { error: 'must say why in a few words' })
    .max(500, { error: 'has at most 500 letters' })
    .nullish(),
});
