import { Field, ID, Int, ObjectType } from '@nestjs/graphql';

/** People who work one phase at a time. */
@ObjectType({ description: 'People who work one phase at a time, across all jobs.' })
export class Crew {
  @Field(() => ID, { description: 'Id of the crew.' })
  readonly id!: string;

  @Field(() => String, { description: 'Name of the crew, unique in the company.' })
  readonly name!: string;

  @Field(() => [String], { description: 'What it can do: labour, mason, cable, electrician, office.' })
  readonly trades!: string[];

  @Field(() => Int, { description: 'How many people work in it.' })
  readonly size!: number;

  @Field(() => String, { description: 'IANA time zone of its hours.' })
  readonly zone!: string;

  @Field(() => Boolean, { description: 'Whether the plan may use it.' })
  readonly active!: boolean;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
