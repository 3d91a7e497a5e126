import { Field, Float, GraphQLISODateTime, Int, ObjectType } from '@nestjs/graphql';

/** A chance with its precision. */
@ObjectType({
  description: 'A chance from 0 to 1, and between which the true one lies with 95 % confidence.',
})
export class Chance {
  @Field(() => Float, { description: 'The estimate.' })
  readonly chance!: number;

  @Field(() => Float, { description: 'The low end.' })
  readonly low!: number;

  @Field(() => Float, { description: 'The high end.' })
  readonly high!: number;
}

/** A date that is kept with some chance. */
@ObjectType({
  description: 'A date by which a job is finished with some chance; null where too often it has no end.',
})
export class LikelyDate {
  @Field(() => Float, { description: 'The chance, from 0 to 1.' })
  readonly share!: number;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'The date.' })
  readonly at!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'The true one is not before this, with 95 % confidence.',
  })
  readonly low!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'The true one is not after this, with 95 % confidence.',
  })
  readonly high!: Date | null;
}

/** What makes a job later than planned. */
@ObjectType({ description: 'What makes a job later.' })
export class DelayCause {
  @Field(() => String, { description: 'durations or weather.' })
  readonly source!: string;

  @Field(() => Float, { description: 'Hours by which the mean end would be earlier without it.' })
  readonly hours!: number;

  @Field(() => Float, { description: 'Its share of all that delays, from 0 to 1.' })
  readonly share!: number;
}

/** How sure the end of one job is. */
@ObjectType({ description: 'How sure the end of one job is.' })
export class JobRisk {
  @Field(() => GraphQLISODateTime, { nullable: true, description: 'The end as planned.' })
  readonly planned!: Date | null;

  @Field(() => [LikelyDate], { description: 'The dates kept with 10, 20 … 90 %.' })
  readonly fan!: LikelyDate[];

  @Field(() => LikelyDate, { description: 'The date kept with 50 %.' })
  readonly half!: LikelyDate;

  @Field(() => LikelyDate, { description: 'The date kept with 80 %.' })
  readonly fourFifths!: LikelyDate;

  @Field(() => Chance, { nullable: true, description: 'That it ends by its due date; null without one.' })
  readonly dueKept!: Chance | null;

  @Field(() => [DelayCause], { description: 'What makes it later, by share.' })
  readonly causes!: DelayCause[];

  readonly jobId!: string;
}

/** How sure one phase is. */
@ObjectType({ description: 'How sure one phase is.' })
export class PhaseRisk {
  @Field(() => Chance, { description: 'That the end of its job hangs on it.' })
  readonly critical!: Chance;

  @Field(() => Chance, {
    nullable: true,
    description: 'That it starts as promised or earlier; null without a promise.',
  })
  readonly promiseKept!: Chance | null;

  readonly phaseId!: string;
}

/** How sure the dates of a plan are. */
@ObjectType({
  description: 'How sure the dates of the plan are: an estimate for deciding, never leave to start.',
})
export class PlanRisk {
  @Field(() => Int, { description: 'Number of the plan it was made for.' })
  readonly planNumber!: number;

  @Field(() => Int, { description: 'How many plans with drawn durations and weather it rests on.' })
  readonly samples!: number;

  @Field(() => Int, { description: 'The seed: equal seeds on an equal plan give equal figures.' })
  readonly seed!: number;

  @Field(() => [String], { description: 'Where its chances come from, and what it is not good for.' })
  readonly assumptions!: readonly string[];

  @Field(() => [JobRisk], { description: 'The jobs, in a fixed order.' })
  readonly jobs!: JobRisk[];

  @Field(() => [PhaseRisk], { description: 'The phases that are not done, in a fixed order.' })
  readonly phases!: PhaseRisk[];
}
