import { Field, Float, GraphQLISODateTime, ID, ObjectType } from '@nestjs/graphql';

/** A temperature taken in or on a placement. */
@ObjectType({ description: 'A temperature taken in or on a placement.' })
export class TemperatureReading {
  @Field(() => ID, { description: 'Id of the reading.' })
  readonly id!: string;

  @Field(() => GraphQLISODateTime, { description: 'When it was taken.' })
  readonly at!: Date;

  @Field(() => Float, { description: 'Temperature of the concrete or mortar, °F.' })
  readonly concreteF!: number;

  @Field(() => Float, { nullable: true, description: 'Temperature of the air beside it, °F.' })
  readonly airF!: number | null;
}
