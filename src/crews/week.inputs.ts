import { Field, InputType } from '@nestjs/graphql';

/** A stretch of open hours. */
@InputType({ description: 'A stretch of open hours within one day, in local time.' })
export class HourRangeInput {
  @Field(() => String, { description: 'Opening time as HH:MM.' })
  readonly from!: string;

  @Field(() => String, {
    description: 'Closing time as HH:MM, after the opening; 24:00 is the end of the day.',
  })
  readonly to!: string;
}

/** Open hours of one weekday. */
@InputType({ description: 'Open hours of one weekday; a day left out is closed.' })
export class DayHoursInput {
  @Field(() => String, { description: 'Weekday: mon, tue, wed, thu, fri, sat or sun.' })
  readonly day!: string;

  @Field(() => [HourRangeInput], { description: 'Open stretches in order; none when the day is closed.' })
  readonly hours!: HourRangeInput[];
}
