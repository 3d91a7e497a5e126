import { Field, GraphQLISODateTime, Int, ObjectType, registerEnumType } from '@nestjs/graphql';
import { ForecastSource } from '../../generated/prisma/enums.js';

registerEnumType(ForecastSource, {
  name: 'ForecastSource',
  description: 'Where the forecasts of a site come from.',
  valuesMap: {
    uploaded: { description: 'People upload them; nothing is fetched.' },
    nationalService: {
      description:
        'Fetched from the public gridpoint forecasts of the national weather service; the United States only.',
    },
    openHourly: {
      description:
        'Fetched from an open hourly forecast service; anywhere. It does not say when a forecast was issued: its age counts from the first fetch.',
    },
  },
});

/** How fetching the forecasts of a site stands. */
@ObjectType({ description: 'How fetching the forecasts of a site stands.' })
export class ForecastFeed {
  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When the source last gave a usable answer, unchanged ones included; null before the first.',
  })
  readonly fetchedAt!: Date | null;

  @Field(() => GraphQLISODateTime, {
    description: 'When it is fetched next, while a job of the site is entered or running.',
  })
  readonly dueAt!: Date;

  @Field(() => Int, { description: 'Failures in a row; 0 when the last fetch went well.' })
  readonly failures!: number;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When it failed last; null when the last fetch went well.',
  })
  readonly failedAt!: Date | null;

  @Field(() => String, {
    nullable: true,
    description:
      'Why it failed, in a sentence; null when the last fetch went well. The forecast in use stays, and so does its age.',
  })
  readonly failure!: string | null;
}

/** What choosing a source gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The site whose forecast source was chosen.' })
export class ForecastSourceChosen {
  readonly siteId!: string;
}
