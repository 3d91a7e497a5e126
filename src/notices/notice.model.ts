import { Field, GraphQLISODateTime, ID, Int, ObjectType, registerEnumType } from '@nestjs/graphql';
import { DeliveryState } from '../generated/prisma/enums.js';
import { connectionType } from '../platform/graphql/page.js';

registerEnumType(DeliveryState, {
  name: 'DeliveryState',
  description: 'What has become of a delivery.',
  valuesMap: {
    claimed: { description: 'To be sent; the error says what it waits for when a try has failed.' },
    sent: { description: 'The mail server has taken it.' },
    failed: { description: 'Given up; the error says why.' },
  },
});

/** A message to people about one happening. */
@ObjectType({ description: 'A message to people about one happening.' })
export class Notice {
  @Field(() => ID, { description: 'Id of the notice.' })
  readonly id!: string;

  @Field(() => String, { description: 'Kind of notice: hookup-ready, visit-today, ...' })
  readonly kind!: string;

  @Field(() => GraphQLISODateTime, { description: 'When it was written.' })
  readonly createdAt!: Date;

  @Field(() => String, { description: 'What it is about: hookup, inspection, phase, ...' })
  readonly subjectType!: string;

  @Field(() => ID, { description: 'Id of what it is about.' })
  readonly subjectId!: string;
}

/** One recipient's copy of a notice. */
@ObjectType({ description: "One recipient's copy of a notice on one channel." })
export class Delivery {
  @Field(() => ID, { description: 'Id of the delivery.' })
  readonly id!: string;

  @Field(() => String, { description: 'How it goes out: email.' })
  readonly channel!: string;

  @Field(() => DeliveryState, { description: 'What has become of it.' })
  readonly state!: DeliveryState;

  @Field(() => Int, { description: 'How often sending was tried.' })
  readonly attempts!: number;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When the mail server took it.' })
  readonly sentAt!: Date | null;

  @Field(() => String, { nullable: true, description: 'Why it is not sent, or not sent yet.' })
  readonly error!: string | null;
}

/** A page of notices. */
export const NoticeConnection = connectionType('Notice', Notice);
