import { Field, GraphQLISODateTime, ID, InputType, Int } from '@nestjs/graphql';
import { KeyedInput } from '../../platform/graphql/client-key.js';

/** Dates to promise for a phase. */
@InputType({ description: 'Dates to promise for a phase; what is left out is taken from the plan.' })
export class CommitPhaseInput extends KeyedInput {
  @Field(() => ID, { description: 'The phase.' })
  readonly phaseId!: string;

  @Field(() => ID, { nullable: true, description: 'Who does it; left out for the crew of the plan.' })
  readonly crewId?: string | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Promised start on a quarter of an hour; give start and finish or neither.',
  })
  readonly startAt?: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Promised finish on a quarter of an hour.',
  })
  readonly finishAt?: Date | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Revision of the phase that was read; checked when given.',
  })
  readonly revision?: number | null;
}

/** A job to promise as planned. */
@InputType({ description: 'A job whose phases are promised as planned; those promised already stay.' })
export class CommitJobInput extends KeyedInput {
  @Field(() => ID, { description: 'The job.' })
  readonly jobId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision of the job that was read; checked when given.' })
  readonly revision?: number | null;
}

/** A promise to take back. */
@InputType({ description: 'A phase whose promise is taken back.' })
export class ReleaseCommitmentInput extends KeyedInput {
  @Field(() => ID, { description: 'The phase.' })
  readonly phaseId!: string;

  @Field(() => Int, {
    nullable: true,
    description: 'Revision of the phase that was read; checked when given.',
  })
  readonly revision?: number | null;
}

/** A start to fix. */
@InputType({ description: 'A start that the office fixes, or frees again.' })
export class PinPhaseInput extends KeyedInput {
  @Field(() => ID, { description: 'The phase.' })
  readonly phaseId!: string;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'The start, on a quarter of an hour; null frees it.',
  })
  readonly startAt?: Date | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Revision of the phase that was read; checked when given.',
  })
  readonly revision?: number | null;
}

/** A crew to require. */
@InputType({ description: 'A crew that must do the phase, or none in particular.' })
export class AssignCrewInput extends KeyedInput {
  @Field(() => ID, { description: 'The phase.' })
  readonly phaseId!: string;

  @Field(() => ID, { nullable: true, description: 'The crew; null lets the plan choose among its trade.' })
  readonly crewId?: string | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Revision of the phase that was read; checked when given.',
  })
  readonly revision?: number | null;
}
