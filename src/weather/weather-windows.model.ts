import { Field, Float, GraphQLISODateTime, ID, ObjectType } from '@nestjs/graphql';

const MARK =
  'How far the limit can be trusted: P published, C common practice, M from memory, T rule of the trade.';
const SOURCE = 'The document it comes from, or what is known about it.';

/** The hour that breaks a limit worst. */
@ObjectType({ description: 'A limit that is broken, with the worst hour.' })
export class WeatherCause {
  @Field(() => ID, { description: 'Id of the limit within its set.' })
  readonly limitId!: string;

  @Field(() => String, { description: 'What the limit guards against, or what it asks for.' })
  readonly label!: string;

  @Field(() => String, { description: 'Limit and value in words.' })
  readonly text!: string;

  @Field(() => Float, { description: 'The worst value, in the unit of the limit.' })
  readonly value!: number;

  @Field(() => Float, { description: 'The limit.' })
  readonly limit!: number;

  @Field(() => String, { description: 'Unit of value and limit.' })
  readonly unit!: string;

  @Field(() => GraphQLISODateTime, { description: 'Begin of the hour with that value.' })
  readonly hour!: Date;

  @Field(() => String, { description: MARK })
  readonly mark!: string;

  @Field(() => String, { description: SOURCE })
  readonly source!: string;
}

/** Time of which the forecast says too little. */
@ObjectType({ description: 'Time of which the forecast says too little: unknown, not fair.' })
export class UnknownWeather {
  @Field(() => GraphQLISODateTime, { description: 'Begin.' })
  readonly from!: Date;

  @Field(() => GraphQLISODateTime, { description: 'End.' })
  readonly to!: Date;
}

/** Time in which the work may not run. */
@ObjectType({ description: 'Time in which the weather closes the work, and by which limits.' })
export class ClosedWeather {
  @Field(() => GraphQLISODateTime, { description: 'Begin.' })
  readonly from!: Date;

  @Field(() => GraphQLISODateTime, { description: 'End.' })
  readonly to!: Date;

  @Field(() => [WeatherCause], { description: 'One for each limit that is broken in it.' })
  readonly causes!: readonly WeatherCause[];
}

/** Time in which something must be done. */
@ObjectType({ description: 'Time in which the weather asks for something while the work goes on.' })
export class RequiredWeather {
  @Field(() => ID, { description: 'Id of the requirement within its set.' })
  readonly requirementId!: string;

  @Field(() => String, { description: 'What must be done.' })
  readonly text!: string;

  @Field(() => GraphQLISODateTime, { description: 'Begin.' })
  readonly from!: Date;

  @Field(() => GraphQLISODateTime, { description: 'End.' })
  readonly to!: Date;

  @Field(() => Boolean, {
    description: 'False while the forecast cannot tell whether it is asked for; be ready for it.',
  })
  readonly known!: boolean;

  @Field(() => WeatherCause, {
    nullable: true,
    description: 'The worst hour that asks for it; null while not known.',
  })
  readonly cause!: WeatherCause | null;

  @Field(() => String, { description: MARK })
  readonly mark!: string;

  @Field(() => String, { description: SOURCE })
  readonly source!: string;
}

/** The weather of a stretch for one kind of work. */
@ObjectType({
  description:
    'The weather of a stretch for one kind of work: when it is closed, what it asks for, what is unknown. It defers to the local code and to the instructions of what is built in.',
})
export class WeatherWindows {
  @Field(() => String, { description: 'Key of the limits: concrete, masonry, ...' })
  readonly limitKey!: string;

  @Field(() => String, { description: 'Name of the limits as shown.' })
  readonly name!: string;

  @Field(() => GraphQLISODateTime, { description: 'Begin of the stretch.' })
  readonly from!: Date;

  @Field(() => GraphQLISODateTime, { description: 'End of the stretch.' })
  readonly to!: Date;

  @Field(() => [String], { description: 'Kinds of protection that are taken to stand; they lift limits.' })
  readonly protection!: readonly string[];

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When the forecast was issued; null when there is none and all is unknown.',
  })
  readonly issuedAt!: Date | null;

  @Field(() => [ClosedWeather], { description: 'When the work is closed, in order of time.' })
  readonly closed!: readonly ClosedWeather[];

  @Field(() => [RequiredWeather], { description: 'What must be done and when, in order of time.' })
  readonly requirements!: readonly RequiredWeather[];

  @Field(() => [UnknownWeather], {
    description: 'Time of which the forecast says too little to call it open, in order of time.',
  })
  readonly unknown!: readonly UnknownWeather[];

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'From here on the forecast cannot tell; null when it can to the end of the stretch.',
  })
  readonly unknownAfter!: Date | null;
}
