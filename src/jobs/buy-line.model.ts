import { Field, Float, Int, ObjectType } from '@nestjs/graphql';

/** A line of the buy list: what the measurements take, with waste, in whole pieces as sold. */
@ObjectType({ description: 'A line of the buy list: with waste, in whole pieces as sold.' })
export class BuyLine {
  @Field(() => String, { description: 'Stable key of what is bought.' })
  readonly key!: string;

  @Field(() => String, { description: 'Name as shown.' })
  readonly label!: string;

  @Field(() => Float, { description: 'How much is built in, without waste.' })
  readonly measured!: number;

  @Field(() => Float, { description: 'How much is needed, waste counted in.' })
  readonly needed!: number;

  @Field(() => String, { description: 'Unit of both amounts.' })
  readonly unit!: string;

  @Field(() => Float, { description: 'Waste as a fraction of what is built in.' })
  readonly waste!: number;

  @Field(() => Int, { description: 'How many to buy.' })
  readonly pieces!: number;

  @Field(() => String, { description: 'What one of them is.' })
  readonly soldAs!: string;

  @Field(() => String, { description: 'How far waste and size can be trusted, by the marks of findings.' })
  readonly mark!: string;

  @Field(() => String, { description: 'Where waste and size come from.' })
  readonly source!: string;
}
