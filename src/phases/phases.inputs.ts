import { Field, GraphQLISODateTime, ID, InputType, Int } from '@nestjs/graphql';
import { z } from 'zod';
import { clientKey, KeyedInput } from '../platform/graphql/client-key.js';

/** Names a phase and the revision it was read at. */
@InputType({ isAbstract: true })
abstract class PhaseInput extends KeyedInput {
  @Field(() => ID, { description: 'The phase.' })
  readonly phaseId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision it was read at; checked when given.' })
  readonly revision?: number | null;
}

@InputType({ description: 'Starts a phase.' })
export class StartPhaseInput extends PhaseInput {
  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it started; now when left out.' })
  readonly at?: Date | null;

  @Field(() => ID, {
    nullable: true,
    description: 'Crew that starts it; left out, the one required, committed or planned.',
  })
  readonly crewId?: string | null;
}

@InputType({ description: 'Finishes a started phase.' })
export class FinishPhaseInput extends PhaseInput {
  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it finished; now when left out.' })
  readonly at?: Date | null;
}

@InputType({ description: 'Takes back a start or a finish that was wrong.' })
export class PutBackPhaseInput extends PhaseInput {
  @Field(() => String, { description: 'Why it was wrong.' })
  readonly reason!: string;
}

@InputType({ description: 'Tells how much work is left of a started phase.' })
export class RecordProgressInput extends PhaseInput {
  @Field(() => Int, { description: 'Minutes of work left for the crew.' })
  readonly remainingMinutes!: number;
}

const keyed = z.object({ clientKey });

/** Schema of a start or a finish. */
export const momentSchema = keyed.extend({ at: z.date().nullish() });

/** Schema of a put-back. */
export const putBackSchema = keyed.extend({
  reason: z.string().trim().min(3, { error: 'say why it was wrong' }).max(2000),
});

/** Schema of a progress report. */
export const progressSchema = keyed.extend({
  remainingMinutes: z.number().int().min(0, { error: 'must be 0 or more' }).max(60_000, {
    error: 'must be at most 60000 minutes; drop the phase and add another if it is that far off',
  }),
});
