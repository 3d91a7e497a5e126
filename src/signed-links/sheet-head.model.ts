import { Field, GraphQLISODateTime, Int, ObjectType } from '@nestjs/graphql';
import { JobState } from '../generated/prisma/enums.js';

/** What stands at the top of a page that a signed link opens. */
@ObjectType({ description: 'What stands at the top of a page that a signed link opens.' })
export class SheetHead {
  @Field(() => String, { description: 'Name of the one the link is for.' })
  readonly recipient!: string;

  @Field(() => String, { description: 'Name of the company that builds.' })
  readonly companyName!: string;

  @Field(() => String, { nullable: true, description: 'Whom to ask in the office.' })
  readonly askName!: string | null;

  @Field(() => String, { nullable: true, description: 'Where to write to them.' })
  readonly askEmail!: string | null;

  @Field(() => Int, { description: 'Number of the job.' })
  readonly jobNumber!: number;

  @Field(() => String, { description: 'Name of the job.' })
  readonly jobName!: string;

  @Field(() => JobState, { description: 'How far the job is.' })
  readonly jobState!: JobState;

  @Field(() => String, { description: 'Street and number of the site.' })
  readonly address!: string;

  @Field(() => String, { description: 'Town of the site.' })
  readonly town!: string;

  @Field(() => String, { description: 'IANA time zone of the site.' })
  readonly zone!: string;

  @Field(() => GraphQLISODateTime, { description: 'When the link ends by itself.' })
  readonly expiresAt!: Date;

  @Field(() => GraphQLISODateTime, { description: 'The moment of this answer, by the clock of the service.' })
  readonly now!: Date;
}
