import { Field, GraphQLISODateTime, ID, InputType, Int } from '@nestjs/graphql';

/** A phase that takes longer. */
@InputType({ description: 'A phase that takes longer than thought.' })
export class WhatIfDelayInput {
  @Field(() => ID, { description: 'The phase.' })
  readonly phaseId!: string;

  @Field(() => Int, { description: 'Minutes longer, from 15 up; counted in whole quarters of an hour.' })
  readonly minutes!: number;
}

/** One more crew. */
@InputType({ description: 'One more crew, like one there is.' })
export class WhatIfExtraCrewInput {
  @Field(() => ID, { description: 'The crew whose trades and hours it has.' })
  readonly crewId!: string;
}

/** A lost day. */
@InputType({ description: 'A stretch in which crews do not work.' })
export class WhatIfLostTimeInput {
  @Field(() => GraphQLISODateTime, { description: 'First moment lost.' })
  readonly from!: Date;

  @Field(() => GraphQLISODateTime, { description: 'When work goes on.' })
  readonly to!: Date;

  @Field(() => ID, { nullable: true, description: 'The one crew that loses it; left out for every crew.' })
  readonly crewId?: string | null;
}

/** Protection that is not set up. */
@InputType({ description: 'A phase that goes without the equipment that protects it.' })
export class WhatIfWithoutProtectionInput {
  @Field(() => ID, { description: 'The phase.' })
  readonly phaseId!: string;
}

/** A start to try. */
@InputType({ description: 'A start to try for a phase.' })
export class WhatIfStartInput {
  @Field(() => ID, { description: 'The phase.' })
  readonly phaseId!: string;

  @Field(() => GraphQLISODateTime, { description: 'The start, on a quarter of an hour.' })
  readonly startAt!: Date;
}

/** What to suppose. */
@InputType({
  description: 'What to suppose; what is given together is supposed together. Nothing is written.',
})
export class WhatIfInput {
  @Field(() => WhatIfDelayInput, { nullable: true, description: 'A phase takes longer.' })
  readonly delay?: WhatIfDelayInput | null;

  @Field(() => WhatIfExtraCrewInput, { nullable: true, description: 'There is one more crew.' })
  readonly extraCrew?: WhatIfExtraCrewInput | null;

  @Field(() => WhatIfLostTimeInput, { nullable: true, description: 'Time is lost.' })
  readonly lostTime?: WhatIfLostTimeInput | null;

  @Field(() => WhatIfWithoutProtectionInput, { nullable: true, description: 'A phase goes unprotected.' })
  readonly withoutProtection?: WhatIfWithoutProtectionInput | null;

  @Field(() => WhatIfStartInput, { nullable: true, description: 'A phase starts at another time.' })
  readonly start?: WhatIfStartInput | null;
}
