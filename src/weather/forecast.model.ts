import { Field, Float, GraphQLISODateTime, ID, ObjectType } from '@nestjs/graphql';

/** What is forecast for one hour. */
@ObjectType({
  description:
    'What is forecast for one hour; a value nobody forecast is null, which is unknown and not fair.',
})
export class ForecastHour {
  @Field(() => GraphQLISODateTime, { description: 'Begin of the hour.' })
  readonly at!: Date;

  @Field(() => Float, { nullable: true, description: 'Air temperature in °F.' })
  readonly temperatureF!: number | null;

  @Field(() => Float, { nullable: true, description: 'Dew point in °F.' })
  readonly dewPointF!: number | null;

  @Field(() => Float, { nullable: true, description: 'Wind in miles per hour.' })
  readonly windMph!: number | null;

  @Field(() => Float, { nullable: true, description: 'Gusts in miles per hour.' })
  readonly gustMph!: number | null;

  @Field(() => Float, { nullable: true, description: 'Chance of rain or snow in percent.' })
  readonly rainChance!: number | null;

  @Field(() => Float, { nullable: true, description: 'Rain, or melted snow, in inches in that hour.' })
  readonly rainInches!: number | null;
}

/** The newest forecast of a site. */
@ObjectType({ description: 'An hourly forecast of a site.' })
export class Forecast {
  @Field(() => ID, { description: 'Id of the forecast.' })
  readonly id!: string;

  @Field(() => String, {
    description: 'Where it comes from: the service it was fetched from, or as entered with the upload.',
  })
  readonly source!: string;

  @Field(() => GraphQLISODateTime, { description: 'When it was issued.' })
  readonly issuedAt!: Date;

  @Field(() => GraphQLISODateTime, { description: 'When it was received here.' })
  readonly receivedAt!: Date;
}

/** What receiving a forecast gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The site whose forecast was received.' })
export class ForecastReceived {
  readonly siteId!: string;
}
