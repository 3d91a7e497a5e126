import { Field, Float, ID, InputType, Int } from '@nestjs/graphql';
import { ForecastSource } from '../../generated/prisma/enums.js';
import { KeyedInput } from '../../platform/graphql/client-key.js';

/** A source of forecasts for a site. */
@InputType({ description: 'Where the forecasts of a site come from, from now on.' })
export class ChooseForecastSourceInput extends KeyedInput {
  @Field(() => ID, { description: 'The site.' })
  readonly siteId!: string;

  @Field(() => ForecastSource, { description: 'The source.' })
  readonly source!: ForecastSource;

  @Field(() => Float, {
    nullable: true,
    description: 'Where the site lies: latitude in degrees; left out keeps the one it has.',
  })
  readonly latitude?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Where the site lies: longitude in degrees, east positive; left out keeps the one it has.',
  })
  readonly longitude?: number | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Revision of the site that was read; checked when given.',
  })
  readonly revision?: number | null;
}
