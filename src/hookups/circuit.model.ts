import { Field, Float, ObjectType } from '@nestjs/graphql';

/** The circuit of a heating set, from its label. */
@ObjectType({ description: 'The circuit of a heating set, from its label.' })
export class Circuit {
  @Field(() => Float, { description: 'Power, W.' })
  readonly watts!: number;

  @Field(() => Float, { description: 'Potential, V.' })
  readonly volts!: number;

  @Field(() => Float, { description: 'Current, A.' })
  readonly amperes!: number;

  @Field(() => Float, { nullable: true, description: 'Next standard breaker for the continuous load, A.' })
  readonly breakerAmperes!: number | null;

  @Field(() => String, { description: 'The circuit in a sentence.' })
  readonly text!: string;

  @Field(() => String, { description: 'Where the rules come from.' })
  readonly source!: string;
}
