import { Field, GraphQLISODateTime, ObjectType } from '@nestjs/graphql';

/** What one rule says about one measured value. */
@ObjectType({ description: 'What one rule says about one measured value.' })
export class Finding {
  @Field(() => String, { description: 'Stable name of the rule, or of the item whose limit was checked.' })
  readonly rule!: string;

  @Field(() => Boolean, { description: 'Whether the limit is kept.' })
  readonly ok!: boolean;

  @Field(() => String, { description: 'The value as measured, with its unit.' })
  readonly measured!: string;

  @Field(() => String, { description: 'The limit it was held against, with its unit.' })
  readonly limit!: string;

  @Field(() => String, {
    description:
      'How far the limit can be trusted: P published, C common practice, M from memory, T rule of the trade.',
  })
  readonly mark!: string;

  @Field(() => String, { description: 'The document the limit comes from, or what is known about it.' })
  readonly source!: string;

  @Field(() => String, { nullable: true, description: 'What to mind, whatever the finding says.' })
  readonly caution!: string | null;

  @Field(() => String, { description: 'What is wrong and what to do, or that it is right.' })
  readonly text!: string;

  @Field(() => [String], {
    nullable: true,
    description:
      'Kinds of phase that should wait until it is put right, empty where it only advises; null for what is not about the design.',
  })
  readonly blocks?: readonly string[] | null;

  @Field(() => String, {
    nullable: true,
    description: 'Why the office goes on against a broken rule of the design; null when it was not waived.',
  })
  readonly waived?: string | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was waived.' })
  readonly waivedAt?: Date | null;
}
