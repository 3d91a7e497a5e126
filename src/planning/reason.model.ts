import { Field, GraphQLISODateTime, ObjectType } from '@nestjs/graphql';

/** Why a phase sits where it sits: the one constraint that binds it. */
@ObjectType({ description: 'Why a phase sits where it sits: the one constraint that binds it.' })
export class Reason {
  @Field(() => String, {
    description:
      'What binds: now, actual, link, crew, equipment, weather, clearance, inspection, cure, notBefore, pin, commitment, calendar or unplanned.',
  })
  readonly kind!: string;

  @Field(() => String, { description: 'The constraint as a plain sentence, in the time of the site.' })
  readonly text!: string;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Until when it binds; null when nobody knows yet.',
  })
  readonly at!: Date | null;

  @Field(() => [Reason], {
    description:
      'What else binds at the same instant: it starts earlier only when all of these give way as well. Empty for reasons further back.',
  })
  readonly alongside!: readonly Reason[];

  readonly phaseId!: string | null;
  readonly inspectionId!: string | null;
  readonly clearanceId!: string | null;
  readonly crewId!: string | null;
  readonly poolId!: string | null;
}
