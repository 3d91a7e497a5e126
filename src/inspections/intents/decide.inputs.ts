import { Field, ID, InputType, Int, registerEnumType } from '@nestjs/graphql';
import { z } from 'zod';
import { HoldPointState } from '../../generated/prisma/enums.js';
import { clientKey, KeyedInput } from '../../platform/graphql/client-key.js';
import { MeasuredValueInput, measuredValues } from '../measured-value.input.js';

/** The decisions on a hold point that are made where the work is. */
export const SiteDecision = { released: 'released', refused: 'refused' } as const;
export type SiteDecision = (typeof SiteDecision)[keyof typeof SiteDecision];

registerEnumType(SiteDecision, {
  name: 'SiteDecision',
  description: 'A decision on a hold point, made where the work is.',
  valuesMap: {
    released: { description: 'What was measured is within its limits.' },
    refused: { description: 'Something must be put right.' },
  },
});

@InputType({ description: 'Decides a hold point on what was measured, or decides it again.' })
export class DecideHoldPointInput extends KeyedInput {
  @Field(() => ID, { description: 'The hold point.' })
  readonly holdPointId!: string;

  @Field(() => Int, {
    nullable: true,
    description: 'Revision it was read at; one that nobody touched since takes the decision at once.',
  })
  readonly revision?: number | null;

  @Field(() => HoldPointState, { description: 'The state that was on record when this was decided.' })
  readonly seen!: HoldPointState;

  @Field(() => SiteDecision, { description: 'The decision.' })
  readonly decision!: SiteDecision;

  @Field(() => [MeasuredValueInput], { description: 'What was measured or confirmed, each item once.' })
  readonly values!: MeasuredValueInput[];

  @Field(() => String, {
    nullable: true,
    description: 'A remark for the record; for a refusal what is wrong and must be put right.',
  })
  readonly remark?: string | null;
}

/** Schema of a decision. */
export const decideSchema = z
  .object({
    clientKey,
    decision: z.enum(SiteDecision),
    values: measuredValues,
    remark: z
      .string()
      .trim()
      .max(2000)
      .nullish()
      .transform((remark) => remark || null),
  })
  .refine(({ decision, remark }) => decision === 'released' || (remark?.length ?? 0) >= 3, {
    path: ['remark'],
    error: 'say what is wrong and must be put right',
  });
