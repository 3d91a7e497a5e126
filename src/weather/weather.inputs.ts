import { Field, GraphQLISODateTime, ID, InputType, Int, registerEnumType } from '@nestjs/graphql';
import { KeyedInput } from '../platform/graphql/client-key.js';

/** Forms of a forecast file. */
export enum ForecastFormat {
  csv = 'csv',
  json = 'json',
}

registerEnumType(ForecastFormat, {
  name: 'ForecastFormat',
  description: 'Form of a forecast file; both use the same names with the unit in them.',
  valuesMap: {
    csv: { description: 'A line issued_at, a line of column names, then a row an hour.' },
    json: { description: 'An object with issued_at and hours.' },
  },
});

/** A forecast to use. */
@InputType({ description: 'An hourly forecast of a site, to use from now on.' })
export class UploadForecastInput extends KeyedInput {
  @Field(() => ID, { description: 'Site it is for.' })
  readonly siteId!: string;

  @Field(() => String, { description: 'Where it comes from, in words.' })
  readonly source!: string;

  @Field(() => String, { description: 'The file as text.' })
  readonly text!: string;

  @Field(() => ForecastFormat, { description: 'Form of the text.' })
  readonly format!: ForecastFormat;
}

/** Limits to use. */
@InputType({ description: 'The weather limits of a kind of work, to use instead of those in force.' })
export class SaveWeatherLimitsInput extends KeyedInput {
  @Field(() => String, { description: 'Key of the set, as phases name it.' })
  readonly key!: string;

  @Field(() => String, { nullable: true, description: 'Name as shown; left out keeps the one it has.' })
  readonly name?: string | null;

  @Field(() => String, { description: 'The limits as JSON, in the form that body of a set gives.' })
  readonly limits!: string;

  @Field(() => String, {
    nullable: true,
    description:
      'What must be done, as JSON in the form that requirementsBody gives; left out keeps what is in force.',
  })
  readonly requirements?: string | null;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;
}

/** A hold to call. */
@InputType({ description: 'A stretch in which a site, or one phase of it, may not be worked on.' })
export class CallWeatherHoldInput extends KeyedInput {
  @Field(() => ID, { description: 'Site that is held.' })
  readonly siteId!: string;

  @Field(() => ID, {
    nullable: true,
    description: 'The one phase that is held; left out for the whole site.',
  })
  readonly phaseId?: string | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it begins; left out for now.' })
  readonly startsAt?: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When it ends; left out while nobody knows.',
  })
  readonly endsAt?: Date | null;

  @Field(() => String, { description: 'Why.' })
  readonly reason!: string;
}

/** A hold to lift. */
@InputType({ description: 'A weather hold that ends now.' })
export class LiftWeatherHoldInput extends KeyedInput {
  @Field(() => ID, { description: 'The hold.' })
  readonly weatherHoldId!: string;

  @Field(() => String, { description: 'Why it may be lifted.' })
  readonly reason!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;
}
