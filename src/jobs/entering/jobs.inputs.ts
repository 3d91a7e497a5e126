import { Field, GraphQLISODateTime, ID, InputType, Int } from '@nestjs/graphql';
import { KeyedInput } from '../../platform/graphql/client-key.js';

/** A new job. */
@InputType({ description: 'A new job from the measurements of a site visit.' })
export class CreateJobInput extends KeyedInput {
  @Field(() => ID, { description: 'Where it is done.' })
  readonly siteId!: string;

  @Field(() => ID, {
    nullable: true,
    description: "Template it is made from; the company's first when left out.",
  })
  readonly templateId?: string | null;

  @Field(() => String, { description: 'Name of the job.' })
  readonly name!: string;

  @Field(() => String, { description: 'Name of the owner of the house.' })
  readonly ownerName!: string;

  @Field(() => Int, { nullable: true, description: '1 is served first, 9 last; 5 when left out.' })
  readonly priority?: number | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'Promised end; none when left out.' })
  readonly dueAt?: Date | null;

  @Field(() => String, { description: 'Measurements of the site visit as JSON text.' })
  readonly measurement!: string;

  @Field(() => Boolean, {
    nullable: true,
    description: 'Whether blankets, enclosures and heaters against the cold are planned; true when left out.',
  })
  readonly coldWeather?: boolean | null;
}

/** What changes in a job. */
@InputType({ description: 'What changes in a job; what is left out stays.' })
export class UpdateJobInput extends KeyedInput {
  @Field(() => ID, { description: 'The job.' })
  readonly jobId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;

  @Field(() => String, { nullable: true, description: 'New name.' })
  readonly name?: string | null;

  @Field(() => String, { nullable: true, description: 'New name of the owner of the house.' })
  readonly ownerName?: string | null;

  @Field(() => Int, { nullable: true, description: 'New priority, 1 to 9.' })
  readonly priority?: number | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'New promised end; null takes the promise away.',
  })
  readonly dueAt?: Date | null;
}

/** A sheet that takes the place of the one a job was entered from. */
@InputType({ description: 'A sheet that takes the place of the one the job was entered from.' })
export class CorrectMeasurementInput extends KeyedInput {
  @Field(() => ID, { description: 'The job.' })
  readonly jobId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;

  @Field(() => String, {
    description: 'Measurements as JSON text, of the same areas and heating sets; what is built follows them.',
  })
  readonly measurement!: string;

  @Field(() => String, { description: 'Why it is corrected.' })
  readonly reason!: string;
}

/** A broken rule of the design that the office goes on against. */
@InputType({ description: 'A broken rule of the design that the office goes on against.' })
export class WaiveFindingInput extends KeyedInput {
  @Field(() => ID, { description: 'The job.' })
  readonly jobId!: string;

  @Field(() => String, { description: 'Name of the rule, as its finding has it.' })
  readonly rule!: string;

  @Field(() => String, { description: 'Text of the finding, which says what it is about.' })
  readonly text!: string;

  @Field(() => String, { description: 'Why the job goes on against it.' })
  readonly reason!: string;
}

/** A job that is given up. */
@InputType({ description: 'A job that is given up.' })
export class CancelJobInput extends KeyedInput {
  @Field(() => ID, { description: 'The job.' })
  readonly jobId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;

  @Field(() => String, { description: 'Why it is given up.' })
  readonly reason!: string;
}
