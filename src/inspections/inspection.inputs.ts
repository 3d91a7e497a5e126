import { Field, GraphQLISODateTime, ID, InputType, Int } from '@nestjs/graphql';
import { z } from 'zod';
import { clientKey, KeyedInput } from '../platform/graphql/client-key.js';

/** Names an inspection and the revision it was read at. */
@InputType({ isAbstract: true })
export abstract class InspectionInput extends KeyedInput {
  @Field(() => ID, { description: 'The inspection.' })
  readonly inspectionId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision it was read at; checked when given.' })
  readonly revision?: number | null;
}

@InputType({ description: 'Records that the authority was asked for a visit.' })
export class RequestInspectionInput extends InspectionInput {
  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was asked; now when left out.' })
  readonly at?: Date | null;
}

@InputType({ description: 'Books the window that the authority gave.' })
export class BookInspectionInput extends InspectionInput {
  @Field(() => GraphQLISODateTime, { description: 'Begin of the window.' })
  readonly visitFrom!: Date;

  @Field(() => GraphQLISODateTime, { description: 'End of the window.' })
  readonly visitTo!: Date;
}

/** The result of a visit. */
@InputType({ isAbstract: true })
export abstract class InspectionResultInput extends InspectionInput {
  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When the result was given; now when left out.',
  })
  readonly at?: Date | null;

  @Field(() => String, { description: 'Who inspected.' })
  readonly inspector!: string;
}

@InputType({ description: 'Records that the visit passed.' })
export class PassInspectionInput extends InspectionResultInput {
  @Field(() => String, { nullable: true, description: 'What the inspector said.' })
  readonly note?: string | null;
}

@InputType({ description: 'Records that the visit failed; a re-inspection is made.' })
export class FailInspectionInput extends InspectionResultInput {
  @Field(() => String, { description: 'What the inspector found wrong.' })
  readonly note!: string;
}

const keyed = z.object({ clientKey });

/** Schema of a request. */
export const requestSchema = keyed.extend({ at: z.date().nullish() });

/** Schema of a booking. */
export const bookSchema = keyed
  .extend({ visitFrom: z.date(), visitTo: z.date() })
  .refine(({ visitFrom, visitTo }) => visitTo > visitFrom, {
    path: ['visitTo'],
    error: 'must be after visitFrom',
  });

/** Schema of a pass. */
export const passSchema = keyed.extend({
  at: z.date().nullish(),
  inspector: z.string().trim().min(1, { error: 'say who inspected' }).max(200),
  note: z.string().trim().max(2000).nullish(),
});

/** Schema of a failure. */
export const failSchema = passSchema.extend({
  note: z.string().trim().min(3, { error: 'say what the inspector found wrong' }).max(2000),
});
