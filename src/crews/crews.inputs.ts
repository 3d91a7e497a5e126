import { Field, ID, InputType, Int } from '@nestjs/graphql';
import { KeyedInput } from '../platform/graphql/client-key.js';
import { DayHoursInput, HourRangeInput } from './week.inputs.js';

/** A new crew. */
@InputType({ description: 'A new crew.' })
export class CreateCrewInput extends KeyedInput {
  @Field(() => String, { description: 'Name, unique in the company.' })
  readonly name!: string;

  @Field(() => [String], { description: 'What it can do: labour, mason, cable, electrician, office.' })
  readonly trades!: string[];

  @Field(() => Int, { description: 'How many people work in it.' })
  readonly size!: number;

  @Field(() => String, { description: 'IANA time zone of its hours.' })
  readonly zone!: string;

  @Field(() => [DayHoursInput], { description: 'Weekly hours.' })
  readonly week!: DayHoursInput[];

  @Field(() => [ID], { nullable: true, description: 'People who work in it; none when left out.' })
  readonly memberIds?: string[] | null;
}

/** What changes in a crew. */
@InputType({ description: 'What changes in a crew; what is left out stays.' })
export class UpdateCrewInput extends KeyedInput {
  @Field(() => ID, { description: 'The crew.' })
  readonly crewId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;

  @Field(() => String, { nullable: true, description: 'New name.' })
  readonly name?: string | null;

  @Field(() => [String], { nullable: true, description: 'New list of what it can do.' })
  readonly trades?: string[] | null;

  @Field(() => Int, { nullable: true, description: 'New number of people.' })
  readonly size?: number | null;

  @Field(() => String, { nullable: true, description: 'New time zone.' })
  readonly zone?: string | null;

  @Field(() => [DayHoursInput], { nullable: true, description: 'New weekly hours.' })
  readonly week?: DayHoursInput[] | null;

  @Field(() => [ID], { nullable: true, description: 'New list of the people who work in it.' })
  readonly memberIds?: string[] | null;

  @Field(() => Boolean, { nullable: true, description: 'False takes it out of planning.' })
  readonly active?: boolean | null;
}

/** Other hours on one day. */
@InputType({ description: 'Hours of a crew on one day that differ from its week.' })
export class SetCrewExceptionInput extends KeyedInput {
  @Field(() => ID, { description: 'The crew.' })
  readonly crewId!: string;

  @Field(() => String, { description: 'The date as YYYY-MM-DD.' })
  readonly day!: string;

  @Field(() => [HourRangeInput], { description: 'Hours of that day; none when the crew is off.' })
  readonly hours!: HourRangeInput[];

  @Field(() => String, { description: 'Why the hours differ.' })
  readonly reason!: string;
}

/** A day that follows the week again. */
@InputType({ description: 'A day on which a crew follows its week again.' })
export class ClearCrewExceptionInput extends KeyedInput {
  @Field(() => ID, { description: 'The crew.' })
  readonly crewId!: string;

  @Field(() => String, { description: 'The date as YYYY-MM-DD.' })
  readonly day!: string;
}
