import { Field, GraphQLISODateTime, ID, Int, ObjectType, registerEnumType } from '@nestjs/graphql';
import { JobState } from '../generated/prisma/enums.js';

registerEnumType(JobState, {
  name: 'JobState',
  description: 'How far a job is.',
  valuesMap: {
    entered: { description: 'Entered; no phase has started.' },
    running: { description: 'At least one phase has started.' },
    done: { description: 'All phases are done.' },
    cancelled: { description: 'Given up; the plan leaves it out.' },
  },
});

/** One entry rebuilt at one site. */
@ObjectType({ description: 'One entry rebuilt at one site.' })
export class Job {
  @Field(() => ID, { description: 'Id of the job.' })
  readonly id!: string;

  @Field(() => Int, { description: 'Number of the job, unique in the company.' })
  readonly number!: number;

  @Field(() => String, { description: 'Name of the job.' })
  readonly name!: string;

  @Field(() => String, { description: 'Name of the owner of the house.' })
  readonly ownerName!: string;

  @Field(() => Int, { description: '1 is served first, 9 last.' })
  readonly priority!: number;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Promised end; null when none was promised.',
  })
  readonly dueAt!: Date | null;

  @Field(() => JobState, { description: 'How far the job is.' })
  readonly state!: JobState;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
