import { Field, GraphQLISODateTime, ID, Int, ObjectType, registerEnumType } from '@nestjs/graphql';
import { LinkPurpose } from '../generated/prisma/enums.js';

registerEnumType(LinkPurpose, {
  name: 'LinkPurpose',
  description: 'What a signed link is for.',
  valuesMap: {
    hookup: { description: 'The hookup sheet: read it, book a day, record the hookup.' },
    ownerWeek: { description: 'The owner of the house reads what happens this week.' },
  },
});

/** How a link stands, in a word. */
export enum LinkState {
  live = 'live',
  expired = 'expired',
  revoked = 'revoked',
}

registerEnumType(LinkState, {
  name: 'LinkState',
  description: 'Whether a signed link opens anything.',
  valuesMap: {
    live: { description: 'It opens its page.' },
    expired: { description: 'Its days are over.' },
    revoked: { description: 'It was taken back, or the account it was mailed to is closed.' },
  },
});

/** An address for one recipient, one purpose and one job, in place of an account. */
@ObjectType({
  description: 'An address for one recipient, one purpose and one job, in place of an account.',
})
export class SignedLink {
  @Field(() => ID, { description: 'Id of the link; it opens nothing.' })
  readonly id!: string;

  @Field(() => LinkPurpose, { description: 'What it is for.' })
  readonly purpose!: LinkPurpose;

  @Field(() => String, { description: 'Name of the one it is for.' })
  readonly recipient!: string;

  @Field(() => GraphQLISODateTime, { description: 'When it was made.' })
  readonly createdAt!: Date;

  @Field(() => GraphQLISODateTime, { description: 'When it ends by itself.' })
  readonly expiresAt!: Date;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was taken back.' })
  readonly revokedAt!: Date | null;

  @Field(() => Int, {
    description: 'Openings refused because it was open in as many browsers as it may be.',
  })
  readonly refusedOpenings!: number;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
