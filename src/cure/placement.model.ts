import { Field, Float, GraphQLISODateTime, ID, Int, ObjectType } from '@nestjs/graphql';

/** Concrete or mortar placed at one time, which must cure. */
@ObjectType({ description: 'Concrete or mortar placed at one time, which must cure.' })
export class Placement {
  @Field(() => ID, { description: 'Id of the placement.' })
  readonly id!: string;

  @Field(() => GraphQLISODateTime, { description: 'When it was placed.' })
  readonly placedAt!: Date;

  @Field(() => String, { description: 'What was placed: concrete, grout or mortar.' })
  readonly material!: string;

  @Field(() => Float, { description: 'Least dimension of the section, in.' })
  readonly sectionInches!: number;

  @Field(() => Float, { description: 'Temperature as placed, °F.' })
  readonly placedTempF!: number;

  @Field(() => Float, { description: 'Strength it must reach, psi.' })
  readonly requiredPsi!: number;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description:
      'When it is predicted to reach its strength. A prediction dates the plan and releases nothing.',
  })
  readonly predictedReleaseAt!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When its protection came off; null while it is on, or where there never was one.',
  })
  readonly protectionOffAt!: Date | null;

  @Field(() => String, {
    nullable: true,
    description: 'Why the office had it taken off before the rules said that it may.',
  })
  readonly protectionOffReason!: string | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
