import { Field, GraphQLISODateTime, ID, ObjectType } from '@nestjs/graphql';

/** Something that must be minded at a placement. */
@ObjectType({
  description: 'Something that must be minded at a placement, or that its protection may come off.',
})
export class CureAlarm {
  @Field(() => ID, { description: 'Id of the alarm.' })
  readonly id!: string;

  @Field(() => String, {
    description:
      'Name of the rule that found it: froze-early, nearing-freezing, cooling-fast, too-cold, too-warm, reading-missing, protection-may-come-off.',
  })
  readonly kind!: string;

  @Field(() => GraphQLISODateTime, { description: 'When it was found.' })
  readonly openedAt!: Date;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When it held no longer; null while it stands.',
  })
  readonly clearedAt!: Date | null;
}
