import { Field, Float, GraphQLISODateTime, ObjectType, registerEnumType } from '@nestjs/graphql';

/** Where the temperatures behind a strength come from. */
export const StrengthBasis = { measured: 'measured', predicted: 'predicted' } as const;
export type StrengthBasis = (typeof StrengthBasis)[keyof typeof StrengthBasis];

registerEnumType(StrengthBasis, {
  name: 'StrengthBasis',
  description: 'Where the temperatures behind a strength come from.',
  valuesMap: {
    measured: { description: 'From temperatures read in the placement; can release a cure.' },
    predicted: { description: 'From assumed temperatures; dates the plan and releases nothing.' },
  },
});

/** A strength estimated from the temperatures of a placement. */
@ObjectType({ description: 'A strength estimated from the temperatures of a placement.' })
export class StrengthEstimate {
  @Field(() => Float, { description: 'Estimated strength, psi.' })
  readonly psi!: number;

  @Field(() => Float, { description: 'Strength it must reach, psi.' })
  readonly requiredPsi!: number;

  @Field(() => StrengthBasis, { description: 'Whether it rests on measured or on assumed temperatures.' })
  readonly basis!: StrengthBasis;

  @Field(() => Float, { description: 'Age at the reference temperature that gives the same strength, h.' })
  readonly equivalentAgeHours!: number;

  @Field(() => String, { description: 'How it was computed, with its parameters.' })
  readonly method!: string;

  @Field(() => String, {
    description:
      'How far the method can be trusted: P published, C common practice, M from memory, T rule of the trade.',
  })
  readonly mark!: string;

  @Field(() => String, { description: 'What to mind before loading it.' })
  readonly caution!: string;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When the required strength is reached or predicted; null when it is out of sight.',
  })
  readonly releaseAt!: Date | null;

  @Field(() => Float, { nullable: true, description: 'Lowest temperature read in it so far, °F.' })
  readonly lowestF!: number | null;
}
