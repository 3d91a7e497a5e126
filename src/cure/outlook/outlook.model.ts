import { Field, Float, GraphQLISODateTime, ObjectType } from '@nestjs/graphql';
import { StrengthBasis } from '../strength-estimate.model.js';

/** One point of the cure of a placement. */
@ObjectType({ description: 'One point of the cure of a placement.' })
export class CurePoint {
  @Field(() => GraphQLISODateTime, { description: 'The moment.' })
  readonly at!: Date;

  @Field(() => StrengthBasis, { description: 'Whether it was measured or is predicted.' })
  readonly basis!: StrengthBasis;

  @Field(() => Float, { description: 'Temperature the strength counts with, °F.' })
  readonly temperatureF!: number;

  @Field(() => Float, {
    description: 'Coldest part of it, °F: an edge or a corner; the reading where it was read.',
  })
  readonly coldestF!: number;

  @Field(() => Float, { nullable: true, description: 'Air around it, °F; null when unknown.' })
  readonly airF!: number | null;

  @Field(() => Float, { description: 'Estimated strength, psi.' })
  readonly psi!: number;
}

/** A moment in a cure, and what it rests on. */
@ObjectType({ description: 'A moment in a cure, and what it rests on.' })
export class CureMoment {
  @Field(() => GraphQLISODateTime, { description: 'The moment.' })
  readonly at!: Date;

  @Field(() => StrengthBasis, { description: 'Whether it was measured or is predicted.' })
  readonly basis!: StrengthBasis;

  @Field(() => Float, {
    nullable: true,
    description: 'Temperature of the coldest part then, °F; where that is meant.',
  })
  readonly coldestF!: number | null;

  @Field(() => Float, { nullable: true, description: 'Strength then, psi; where that is meant.' })
  readonly psi!: number | null;
}

/** How a placement goes: measured up to the last reading, predicted from there on. */
@ObjectType({
  description:
    'How a placement goes: measured up to the last reading, predicted from there on. A prediction releases nothing.',
})
export class CureOutlook {
  @Field(() => [CurePoint], { description: 'Its course in order of time, thinned to what a drawing needs.' })
  readonly points!: CurePoint[];

  @Field(() => Float, { description: 'Strength it must reach, psi.' })
  readonly requiredPsi!: number;

  @Field(() => CureMoment, { nullable: true, description: 'When it has that; null when out of sight.' })
  readonly release!: CureMoment | null;

  @Field(() => CureMoment, {
    nullable: true,
    description: 'When its coldest part has the 500 psi that let it freeze; null when out of sight.',
  })
  readonly firstFreeze!: CureMoment | null;

  @Field(() => Float, { nullable: true, description: 'Hours from placing to that; null when out of sight.' })
  readonly hoursToFirstFreeze!: number | null;

  @Field(() => CureMoment, {
    description: 'Lowest temperature of its coldest part until it has its strength.',
  })
  readonly lowest!: CureMoment;

  @Field(() => CureMoment, {
    nullable: true,
    description:
      'When its coldest part freezes before 500 psi; null when it does not, as far as can be seen.',
  })
  readonly freezes!: CureMoment | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description:
      'Up to when the air is forecast; null when it is not. What comes after rests on the assumption.',
  })
  readonly airKnownUntil!: Date | null;

  @Field(() => String, { description: 'How it was computed.' })
  readonly method!: string;

  @Field(() => String, { description: 'What is assumed where the air is unknown.' })
  readonly assumption!: string;

  @Field(() => String, {
    description:
      'How far the method can be trusted: P published, C common practice, M from memory, T rule of the trade.',
  })
  readonly mark!: string;

  @Field(() => String, { description: 'Where the method comes from.' })
  readonly source!: string;

  @Field(() => String, { description: 'What to mind before loading it.' })
  readonly caution!: string;
}
