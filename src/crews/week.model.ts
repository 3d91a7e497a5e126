import { Field, ID, ObjectType } from '@nestjs/graphql';

/** A stretch of open hours within one day. */
@ObjectType({ description: 'A stretch of open hours within one day, in local time.' })
export class HourRange {
  @Field(() => String, { description: 'Opening time as HH:MM.' })
  readonly from!: string;

  @Field(() => String, { description: 'Closing time as HH:MM; 24:00 is the end of the day.' })
  readonly to!: string;
}

/** Open hours of one weekday. */
@ObjectType({ description: 'Open hours of one weekday.' })
export class DayHours {
  @Field(() => String, { description: 'Weekday: mon, tue, wed, thu, fri, sat or sun.' })
  readonly day!: string;

  @Field(() => [HourRange], { description: 'Open stretches of the day in order; none when it is closed.' })
  readonly hours!: HourRange[];
}

/** A day on which a crew's hours differ from its week. */
@ObjectType({ description: "A day on which a crew's hours differ from its week." })
export class CrewException {
  @Field(() => ID, { description: 'Id of the exception.' })
  readonly id!: string;

  @Field(() => String, { description: 'The date as YYYY-MM-DD.' })
  readonly day!: string;

  @Field(() => [HourRange], { description: 'Hours worked that day; none when the crew is off.' })
  readonly hours!: HourRange[];

  @Field(() => String, { description: 'Why the hours differ.' })
  readonly reason!: string;
}
