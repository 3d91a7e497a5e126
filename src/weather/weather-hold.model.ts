import { Field, GraphQLISODateTime, ID, Int, ObjectType, registerEnumType } from '@nestjs/graphql';
import { HoldCause } from '../generated/prisma/enums.js';

registerEnumType(HoldCause, {
  name: 'HoldCause',
  description: 'Who or what holds the work.',
  valuesMap: {
    called: { description: 'A person on site or in the office called it.' },
    forecast: { description: 'The forecast breaks a limit of the phase in the next 72 hours.' },
  },
});

/** A stretch in which a phase, or a whole site, may not run. */
@ObjectType({ description: 'A stretch in which a phase, or a whole site, may not run for the weather.' })
export class WeatherHold {
  @Field(() => ID, { description: 'Id of the hold.' })
  readonly id!: string;

  @Field(() => HoldCause, { description: 'Who or what holds the work.' })
  readonly cause!: HoldCause;

  @Field(() => GraphQLISODateTime, { description: 'When it begins.' })
  readonly startsAt!: Date;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it ends; null while nobody knows.' })
  readonly endsAt!: Date | null;

  @Field(() => String, {
    description: 'Why, with the limit, the value and the hour when the forecast is the cause.',
  })
  readonly reason!: string;

  @Field(() => String, {
    nullable: true,
    description:
      'What brought the forecast’s hold about: a forecast, changed limits, protection, a moved plan.',
  })
  readonly openedFor!: string | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When it was opened or called; null when that was not recorded.',
  })
  readonly openedAt!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When it was lifted; null while it stands.',
  })
  readonly liftedAt!: Date | null;

  @Field(() => String, { nullable: true, description: 'Why it was lifted.' })
  readonly liftReason!: string | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}

/** What calling or lifting a hold gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The weather hold as it now stands.' })
export class WeatherHoldChanged {
  readonly weatherHoldId!: string;
}
