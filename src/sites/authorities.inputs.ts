import { Field, InputType, Int } from '@nestjs/graphql';
import { DayHoursInput } from '../crews/crews.face.js';
import { KeyedInput } from '../platform/graphql/client-key.js';

/** A new authority. */
@InputType({ description: 'A new authority having jurisdiction.' })
export class CreateAuthorityInput extends KeyedInput {
  @Field(() => String, { description: 'Name of the office, unique in the company.' })
  readonly name!: string;

  @Field(() => Int, { description: 'Hours of notice between a request and the earliest visit.' })
  readonly noticeHours!: number;

  @Field(() => Int, { description: 'Minutes a visit takes.' })
  readonly visitMinutes!: number;

  @Field(() => String, { description: 'IANA time zone of its visiting hours.' })
  readonly zone!: string;

  @Field(() => [DayHoursInput], { description: 'Visiting hours.' })
  readonly week!: DayHoursInput[];

  @Field(() => String, { nullable: true, description: 'Telephone number for requests.' })
  readonly phone?: string | null;
}
