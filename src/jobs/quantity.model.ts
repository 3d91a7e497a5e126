import { Field, Float, ObjectType } from '@nestjs/graphql';

/** An amount of work or material that follows from the measurements. */
@ObjectType({ description: 'An amount of work or material that follows from the measurements.' })
export class Quantity {
  @Field(() => String, { description: 'Stable key of the quantity.' })
  readonly key!: string;

  @Field(() => String, { description: 'Name as shown.' })
  readonly label!: string;

  @Field(() => Float, { description: 'How much.' })
  readonly value!: number;

  @Field(() => String, { description: 'Unit of the value.' })
  readonly unit!: string;
}
