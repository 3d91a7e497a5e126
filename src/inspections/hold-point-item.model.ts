import { Field, Float, ID, ObjectType } from '@nestjs/graphql';

/** One thing to measure or confirm at a hold point. */
@ObjectType({ description: 'One thing to measure or to confirm at a hold point.' })
export class HoldPointItem {
  @Field(() => ID, { description: 'Id of the item, unique within its hold point.' })
  readonly id!: string;

  @Field(() => String, { description: 'What to measure or confirm.' })
  readonly label!: string;

  @Field(() => String, { nullable: true, description: 'Unit of the value; null for yes and no.' })
  readonly unit!: string | null;

  @Field(() => Boolean, {
    description: 'Whether several values are asked for: one at each footing, riser or run.',
  })
  readonly many!: boolean;

  @Field(() => String, { description: 'The limit in words.' })
  readonly limitText!: string;

  @Field(() => Boolean, { description: 'Whether the hold point cannot be released without it.' })
  readonly required!: boolean;

  @Field(() => String, {
    description:
      'How far the limit can be trusted: P published, C common practice, M from memory, T rule of the trade.',
  })
  readonly mark!: string;

  @Field(() => String, { description: 'The document the limit comes from, or what is known about it.' })
  readonly source!: string;
}

/** A value as it was measured or confirmed. */
@ObjectType({ description: 'A value as it was measured or confirmed.' })
export class MeasuredValue {
  @Field(() => ID, { description: 'Item that was measured.' })
  readonly itemId!: string;

  @Field(() => Float, { nullable: true, description: 'The one value taken, in the unit of the item.' })
  readonly value!: number | null;

  @Field(() => [Float], {
    nullable: true,
    description: 'The values taken, where several are asked for, in the unit of the item.',
  })
  readonly values!: number[] | null;

  @Field(() => Boolean, { nullable: true, description: 'Yes or no, where that is asked for.' })
  readonly confirmed!: boolean | null;

  @Field(() => String, { description: 'The value in words, with its unit.' })
  readonly text!: string;
}
