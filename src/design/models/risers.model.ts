import { Field, Float, Int, ObjectType } from '@nestjs/graphql';

/** One step, from the walk upwards; the last is the landing. */
@ObjectType({ description: 'One step, from the walk upwards; the last is the landing.' })
export class DesignStep {
  @Field(() => Float, { description: 'Finished riser up to it, in.' })
  readonly riser!: number;

  @Field(() => Float, { description: 'Finished height above the finished walk, in.' })
  readonly finished!: number;

  @Field(() => Float, { description: 'Top of the block above the finished walk, in.' })
  readonly blockTop!: number;

  @Field(() => String, { description: 'Courses of block from the footing, and what to cut or add.' })
  readonly courses!: string;
}

/** Equal finished risers from the sill down to the walk. */
@ObjectType({
  description: 'Equal finished risers from the sill down to the walk, and the block under them.',
})
export class DesignRisers {
  @Field(() => Float, { description: 'From the walk to the landing, in.' })
  readonly rise!: number;

  @Field(() => Int, { description: 'How many.' })
  readonly count!: number;

  @Field(() => Float, { description: 'Each, in.' })
  readonly riser!: number;

  @Field(() => [DesignStep], { description: 'Every step.' })
  readonly steps!: readonly DesignStep[];

  @Field(() => [String], { description: 'What to do where it does not fit; empty where it does.' })
  readonly advice!: readonly string[];
}
