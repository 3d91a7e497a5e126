import { Field, GraphQLISODateTime, ID, ObjectType } from '@nestjs/graphql';

/** One line of the journal. */
@ObjectType({ description: 'One line of the journal: what was changed, by whom, and why.' })
export class JournalEntry {
  @Field(() => ID, { description: 'Number of the entry; later entries have higher numbers.' })
  readonly id!: string;

  @Field(() => GraphQLISODateTime, { description: 'When it happened.' })
  readonly at!: Date;

  @Field(() => String, { description: 'What was done, in the words of the trade.' })
  readonly action!: string;

  @Field(() => String, { description: 'Type of the row that was changed.' })
  readonly subjectType!: string;

  @Field(() => ID, { description: 'Id of the row that was changed.' })
  readonly subjectId!: string;

  @Field(() => String, { nullable: true, description: 'Why, where a reason was asked for.' })
  readonly reason!: string | null;
}
