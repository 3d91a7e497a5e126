import { Field, ID, InputType, Int } from '@nestjs/graphql';
import { z } from 'zod';
import { clientKey, KeyedInput } from '../platform/graphql/client-key.js';
import { MeasuredValueInput, measuredValues } from './measured-value.input.js';

/** Names a hold point and the revision it was read at. */
@InputType({ isAbstract: true })
abstract class HoldPointInput extends KeyedInput {
  @Field(() => ID, { description: 'The hold point.' })
  readonly holdPointId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision it was read at; checked when given.' })
  readonly revision?: number | null;
}

@InputType({ description: 'Releases a hold point on what was measured.' })
export class ReleaseHoldPointInput extends HoldPointInput {
  @Field(() => [MeasuredValueInput], { description: 'What was measured or confirmed, each item once.' })
  readonly values!: MeasuredValueInput[];

  @Field(() => String, { nullable: true, description: 'A note for the record.' })
  readonly note?: string | null;
}

@InputType({ description: 'Refuses a hold point; it can be released later.' })
export class RefuseHoldPointInput extends HoldPointInput {
  @Field(() => [MeasuredValueInput], { description: 'What was measured, as far as it was.' })
  readonly values!: MeasuredValueInput[];

  @Field(() => String, { description: 'What is wrong and must be put right.' })
  readonly reason!: string;
}

@InputType({ description: 'Waives a hold point on the authority of the acting person.' })
export class WaiveHoldPointInput extends HoldPointInput {
  @Field(() => String, { description: 'Why it may be waived: at least ten characters.' })
  readonly reason!: string;
}

const keyed = z.object({ clientKey });
const text = (least: number, message: string) => z.string().trim().min(least, { error: message }).max(2000);

/** Schema of a release. */
export const releaseSchema = keyed.extend({
  values: measuredValues,
  note: z.string().trim().max(2000).nullish(),
});

/** Schema of a refusal on site. */
export const refuseSchema = keyed.extend({
  values: measuredValues,
  reason: text(3, 'say what is wrong and must be put right'),
});

/** Schema of a waiver. */
export const waiveSchema = keyed.extend({
  reason: text(10, 'give the reason in at least ten characters; it is kept in the record'),
});
