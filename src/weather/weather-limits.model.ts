import { Field, Float, ID, Int, ObjectType } from '@nestjs/graphql';

/** One limit of the weather for a kind of work, or one thing the weather asks for. */
@ObjectType({
  description: 'One limit of the weather for a kind of work, or one thing that the weather asks for.',
})
export class WeatherLimit {
  @Field(() => ID, { description: 'Id of the limit, unique within its set.' })
  readonly id!: string;

  @Field(() => String, { description: 'The limit in words.' })
  readonly label!: string;

  @Field(() => String, {
    description: 'What it looks at: temperature, wind, gust, rainChance, rainAmount, evaporation.',
  })
  readonly measure!: string;

  @Field(() => Float, { description: 'The figure.' })
  readonly value!: number;

  @Field(() => String, { description: 'Unit of the figure.' })
  readonly unit!: string;

  @Field(() => [String], { description: 'Kinds of protection that lift it when they stand.' })
  readonly liftedBy!: readonly string[];

  @Field(() => String, {
    description:
      'How far the limit can be trusted: P published, C common practice, M from memory, T rule of the trade.',
  })
  readonly mark!: string;

  @Field(() => String, { description: 'The document it comes from, or what is known about it.' })
  readonly source!: string;

  @Field(() => String, { description: 'The limit as JSON, as it stands in the body of a set.' })
  readonly body!: string;
}

/** The limits of the weather that close a kind of work. */
@ObjectType({
  description: 'The limits of the weather that close a kind of work; the company may edit them.',
})
export class WeatherLimitSet {
  @Field(() => ID, { description: 'Id of the set; its key while the company uses the default unchanged.' })
  readonly id!: string;

  @Field(() => String, { description: 'Key that a phase names: concrete, masonry, ...' })
  readonly key!: string;

  @Field(() => String, { description: 'Name as shown.' })
  readonly name!: string;

  @Field(() => Int, { description: 'Revision of the row; 0 for a default.' })
  readonly revision!: number;
}

/** What saving limits gives; the set is loaded when it is asked for. */
@ObjectType({ description: 'The limits as they now stand.' })
export class WeatherLimitsSaved {
  readonly key!: string;
}
