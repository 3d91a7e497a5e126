import { Field, ID, Int, ObjectType } from '@nestjs/graphql';

/** What a kind of job consists of, as data that the company edits. */
@ObjectType({ description: 'What a kind of job consists of, as data that the company edits.' })
export class Template {
  @Field(() => ID, { description: 'Id of the template.' })
  readonly id!: string;

  @Field(() => String, { description: 'Name of the template, unique in the company.' })
  readonly name!: string;

  @Field(() => Boolean, { description: 'Whether new jobs may use it.' })
  readonly active!: boolean;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
