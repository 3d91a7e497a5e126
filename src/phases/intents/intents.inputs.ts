import { Field, GraphQLISODateTime, ID, InputType, Int, registerEnumType } from '@nestjs/graphql';
import { z } from 'zod';
import { clientKey, KeyedInput } from '../../platform/graphql/client-key.js';

/** Which moment of a phase is marked. */
export const PhaseMark = { start: 'start', finish: 'finish' } as const;
export type PhaseMark = (typeof PhaseMark)[keyof typeof PhaseMark];

registerEnumType(PhaseMark, {
  name: 'PhaseMark',
  description: 'Which moment of a phase is marked.',
  valuesMap: {
    start: { description: 'When its work began.' },
    finish: { description: 'When its work was done.' },
  },
});

/** Names the phase of an intent and the revision it was read at. */
@InputType({ isAbstract: true })
abstract class PhaseIntentInput extends KeyedInput {
  @Field(() => ID, { description: 'The phase.' })
  readonly phaseId!: string;

  @Field(() => Int, {
    nullable: true,
    description: 'Revision the phase was read at; a phase that nobody touched since takes the value at once.',
  })
  readonly revision?: number | null;
}

@InputType({ description: 'Marks when a phase started or finished, or corrects that.' })
export class MarkPhaseInput extends PhaseIntentInput {
  @Field(() => PhaseMark, { description: 'Which moment.' })
  readonly mark!: PhaseMark;

  @Field(() => GraphQLISODateTime, { description: 'When it was.' })
  readonly at!: Date;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'The moment that was on record when this was asked for; null for none.',
  })
  readonly seen?: Date | null;
}

@InputType({ description: 'Writes the note of a phase.' })
export class NotePhaseInput extends PhaseIntentInput {
  @Field(() => String, { nullable: true, description: 'The note; null takes it away.' })
  readonly note?: string | null;

  @Field(() => String, { nullable: true, description: 'The note that stood when this was written.' })
  readonly seen?: string | null;
}

@InputType({ description: 'Tells how much work is left of a started phase.' })
export class TellRemainingInput extends PhaseIntentInput {
  @Field(() => Int, { description: 'Minutes of work left for the crew.' })
  readonly remainingMinutes!: number;

  @Field(() => Int, { nullable: true, description: 'The minutes that stood when this was told.' })
  readonly seen?: number | null;
}

const keyed = z.object({ clientKey });

/** Schema of a mark. */
export const markSchema = keyed.extend({ at: z.date(), seen: z.date().nullish() });

/** Schema of a note: an empty one is none. */
export const noteSchema = keyed.extend({
  note: z
    .string()
    .trim()
    .max(2000, { error: 'has at most 2000 letters' })
    .nullish()
    .transform((note) => note || null),
});
