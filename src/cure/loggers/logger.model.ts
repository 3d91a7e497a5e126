import { Field, GraphQLISODateTime, ID, Int, ObjectType } from '@nestjs/graphql';

/** A temperature logger that posts readings with a token of its own. */
@ObjectType({ description: 'A temperature logger that posts readings with a token of its own.' })
export class Logger {
  @Field(() => ID, { description: 'Id of the logger.' })
  readonly id!: string;

  @Field(() => String, { description: 'Name people know it by.' })
  readonly name!: string;

  @Field(() => GraphQLISODateTime, { description: 'When it was registered.' })
  readonly createdAt!: Date;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it last posted; null when never.' })
  readonly lastPostAt!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When its token was revoked; null while it may post.',
  })
  readonly revokedAt!: Date | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
