import { Field, ID, InputType, Int } from '@nestjs/graphql';
import { z } from 'zod';
import { LinkPurpose } from '../generated/prisma/enums.js';
import { clientKey, KeyedInput } from '../platform/graphql/client-key.js';
import { MOST_DAYS } from './purposes.js';

@InputType({ description: 'Makes a signed link.' })
export class MakeSignedLinkInput extends KeyedInput {
  @Field(() => ID, { description: 'The job whose page it opens.' })
  readonly jobId!: string;

  @Field(() => LinkPurpose, { description: 'What it is for.' })
  readonly purpose!: LinkPurpose;

  @Field(() => String, { description: 'Name of the one it is for; shown wherever they act.' })
  readonly recipient!: string;

  @Field(() => Int, {
    nullable: true,
    description: 'Days until it ends by itself, 1 to 365; left out, 60 for a hookup and 120 for an owner.',
  })
  readonly days?: number | null;
}

@InputType({ description: 'Takes a signed link back; every browser in which it is open is shut at once.' })
export class RevokeSignedLinkInput extends KeyedInput {
  @Field(() => ID, { description: 'The link.' })
  readonly signedLinkId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision it was read at; checked when given.' })
  readonly revision?: number | null;
}

/** Schema of a link to make. */
export const makeLinkSchema = z.object({
  clientKey,
  recipient: z
    .string()
    .trim()
    .min(1, { error: 'must name the one the link is for' })
    .max(80, { error: 'has at most 80 letters' }),
  days: z
    .number()
    .min(1, { error: `must be 1 to ${MOST_DAYS} days` })
    .max(MOST_DAYS, { error: `must be 1 to ${MOST_DAYS} days` })
    .nullish(),
});
