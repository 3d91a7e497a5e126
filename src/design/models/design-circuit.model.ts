import { Field, Float, Int, ObjectType } from '@nestjs/graphql';

/** The circuit of heating sets that are switched together; a licensed electrician decides. */
@ObjectType({ description: 'The circuit of heating sets switched together; a licensed electrician decides.' })
export class DesignCircuit {
  @Field(() => String, { description: 'Key of the zone.' })
  readonly zone!: string;

  @Field(() => [String], { description: 'Keys of its heating sets.' })
  readonly sets!: readonly string[];

  @Field(() => Float, { description: 'Power on the supply, W.' })
  readonly watts!: number;

  @Field(() => Float, { description: 'Current, A.' })
  readonly load!: number;

  @Field(() => Float, {
    nullable: true,
    description: '125 % of it, A; null above what the tables here reach.',
  })
  readonly designLoad!: number | null;

  @Field(() => Float, { nullable: true, description: 'Next standard breaker, A.' })
  readonly breaker!: number | null;

  @Field(() => Int, { nullable: true, description: 'Copper conductor, AWG.' })
  readonly conductorAwg!: number | null;

  @Field(() => Int, { nullable: true, description: 'Rating of the terminals that it is sized for, °C.' })
  readonly terminals!: number | null;

  @Field(() => String, { nullable: true, description: 'Where the sizes come from, with the mark in words.' })
  readonly source!: string | null;

  @Field(() => String, { description: 'What to mind.' })
  readonly caution!: string;
}
