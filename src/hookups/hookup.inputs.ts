import { Field, Float, GraphQLISODateTime, ID, InputType, Int } from '@nestjs/graphql';
import { z } from 'zod';
import { clientKey, KeyedInput } from '../platform/graphql/client-key.js';

/** Names a hookup and the revision it was read at. */
@InputType({ isAbstract: true })
export abstract class HookupInput extends KeyedInput {
  @Field(() => ID, { description: 'The hookup.' })
  readonly hookupId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision it was read at; checked when given.' })
  readonly revision?: number | null;
}

@InputType({ description: 'Records how the leads of a heating set stand.' })
export class RecordLeadsInput extends HookupInput {
  @Field(() => Boolean, { description: 'Whether the cold lead is through the wall.' })
  readonly coldLeadThrough!: boolean;

  @Field(() => Float, {
    nullable: true,
    description: 'Free length of the cold lead inside the wall, in; left out, it is not measured.',
  })
  readonly coldLeadFreeInches?: number | null;

  @Field(() => Boolean, { description: 'Whether the sensor lead is through the wall.' })
  readonly sensorThrough!: boolean;

  @Field(() => Boolean, { description: 'Whether both leads are labelled.' })
  readonly leadsLabelled!: boolean;
}

@InputType({ description: 'Books the day of a hookup.' })
export class BookHookupInput extends HookupInput {
  @Field(() => GraphQLISODateTime, { description: 'Day, or begin, of the visit.' })
  readonly day!: Date;
}

@InputType({ description: 'Records a connection that was made.' })
export class RecordHookupInput extends HookupInput {
  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was made; now when left out.' })
  readonly at?: Date | null;

  @Field(() => Float, { description: 'Rating of the breaker, A.' })
  readonly breakerAmperes!: number;

  @Field(() => Boolean, { description: 'Whether the disconnect is in place and marked.' })
  readonly disconnect!: boolean;

  @Field(() => Boolean, {
    description: 'Whether ground-fault protection of equipment is in place and tested.',
  })
  readonly groundFault!: boolean;

  @Field(() => String, { nullable: true, description: 'A note for the record.' })
  readonly note?: string | null;
}

@InputType({ description: 'Records that a heating set was energised.' })
export class RecordEnergisedInput extends HookupInput {
  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was; now when left out.' })
  readonly at?: Date | null;
}

const keyed = z.object({ clientKey });

/** Schema of the leads. */
export const leadsSchema = keyed.extend({
  coldLeadFreeInches: z
    .number()
    .min(0, { error: 'must be 0 to 600 in; measure it again' })
    .max(600, { error: 'must be 0 to 600 in; measure it again' })
    .nullish(),
});

/** Schema of a booking. */
export const bookSchema = keyed.extend({ day: z.date() });

/** Schema of a connection. */
export const hookupSchema = keyed.extend({
  at: z.date().nullish(),
  breakerAmperes: z
    .number()
    .min(1, { error: 'must be 1 to 400 A; read the breaker again' })
    .max(400, { error: 'must be 1 to 400 A; read the breaker again' }),
  note: z.string().trim().max(2000).nullish(),
});

/** Schema of an energising. */
export const energisedSchema = keyed.extend({ at: z.date().nullish() });
