import { Field, ID, Int, ObjectType } from '@nestjs/graphql';

/** The authority having jurisdiction, which inspects. */
@ObjectType({ description: 'The authority having jurisdiction, which inspects.' })
export class Authority {
  @Field(() => ID, { description: 'Id of the authority.' })
  readonly id!: string;

  @Field(() => String, { description: 'Name of the office, unique in the company.' })
  readonly name!: string;

  @Field(() => Int, { description: 'Hours of notice between a request and the earliest visit.' })
  readonly noticeHours!: number;

  @Field(() => Int, { description: 'Minutes a visit takes.' })
  readonly visitMinutes!: number;

  @Field(() => String, { description: 'IANA time zone of its visiting hours.' })
  readonly zone!: string;

  @Field(() => String, { nullable: true, description: 'Telephone number for requests.' })
  readonly phone!: string | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
