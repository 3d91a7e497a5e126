import { Field, Float, ID, InputType, Int } from '@nestjs/graphql';
import { ImprovementStop } from '../../generated/prisma/enums.js';
import { KeyedInput } from '../../platform/graphql/client-key.js';
import './improvement-enums.js';

/** What counts how much in a plan. */
@InputType({
  description: 'What counts how much in a plan, from 0 to 1000; what is left out counts as usual.',
})
export class PlanWeightsInput {
  @Field(() => Float, { nullable: true, description: 'Being late.' })
  readonly lateness?: number | null;

  @Field(() => Float, { nullable: true, description: 'Finishing early.' })
  readonly finish?: number | null;

  @Field(() => Float, { nullable: true, description: 'Keeping promised dates.' })
  readonly disturbance?: number | null;

  @Field(() => Float, { nullable: true, description: 'Sparing crews the move to another site.' })
  readonly crewMoves?: number | null;
}

/** A search to start. */
@InputType({ description: 'A search for a better plan to start.' })
export class StartImprovementInput extends KeyedInput {
  @Field(() => Int, { nullable: true, description: 'Seconds it may search, 1 to 600; 20 when left out.' })
  readonly seconds?: number | null;

  @Field(() => PlanWeightsInput, {
    nullable: true,
    description: 'What counts how much; as usual when left out.',
  })
  readonly weights?: PlanWeightsInput | null;

  @Field(() => Int, {
    nullable: true,
    description:
      'Seed of the search, from 0; the same seed on the same plan searches alike. Chosen when left out.',
  })
  readonly seed?: number | null;
}

/** A search to stop. */
@InputType({ description: 'A search to stop.' })
export class StopImprovementInput extends KeyedInput {
  @Field(() => ID, { description: 'The search.' })
  readonly improvementId!: string;

  @Field(() => ImprovementStop, {
    nullable: true,
    description: 'What becomes of what it has found; kept when left out.',
  })
  readonly how?: ImprovementStop | null;
}
