import { Field, Float, ID, InputType } from '@nestjs/graphql';
import { z } from 'zod';

/** What was measured or confirmed for one item; exactly one of value, values and confirmed. */
@InputType({
  description: 'What was measured or confirmed for one item: exactly one of value, values and confirmed.',
})
export class MeasuredValueInput {
  @Field(() => ID, { description: 'Item that was measured.' })
  readonly itemId!: string;

  @Field(() => Float, { nullable: true, description: 'The one value taken, in the unit of the item.' })
  readonly value?: number | null;

  @Field(() => [Float], {
    nullable: true,
    description: 'The values taken where the item asks for many, in the unit of the item.',
  })
  readonly values?: number[] | null;

  @Field(() => Boolean, { nullable: true, description: 'Yes or no where that is asked for.' })
  readonly confirmed?: boolean | null;
}

const one = z
  .object({
    itemId: z.string().min(1),
    value: z.number().nullish(),
    values: z.array(z.number()).min(1, { error: 'enter at least one value' }).nullish(),
    confirmed: z.boolean().nullish(),
  })
  .refine(
    (given) => [given.value, given.values, given.confirmed].filter((part) => part != null).length === 1,
    {
      error: 'enter exactly one of value, values and confirmed',
    },
  );

/** Schema of the measured values of a hold point, each item once. */
export const measuredValues = z
  .array(one)
  .max(200)
  .refine((all) => new Set(all.map(({ itemId }) => itemId)).size === all.length, {
    error: 'an item stands twice; enter each item once',
  });
