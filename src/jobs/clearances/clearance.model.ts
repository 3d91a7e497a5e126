import { Field, GraphQLISODateTime, ID, Int, ObjectType, registerEnumType } from '@nestjs/graphql';
import { ClearanceKind, ClearanceState } from '../../generated/prisma/enums.js';

registerEnumType(ClearanceKind, {
  name: 'ClearanceKind',
  description: 'Kind of leave from outside.',
  valuesMap: {
    permit: { description: 'A permit of the authority.' },
    markOut: { description: 'The utility mark-out before digging; it lapses.' },
    material: { description: 'Ordered material on site.' },
  },
});

registerEnumType(ClearanceState, {
  name: 'ClearanceState',
  description: 'How far a clearance is.',
  valuesMap: {
    needed: { description: 'Not asked for yet.' },
    requested: { description: 'Asked for, not given.' },
    cleared: { description: 'Given or delivered; see lapsesAt.' },
  },
});

/** Leave from outside that a phase waits for. */
@ObjectType({ description: 'Leave from outside: permit, utility mark-out or delivered material.' })
export class Clearance {
  @Field(() => ID, { description: 'Id of the clearance.' })
  readonly id!: string;

  @Field(() => String, { description: 'Key of the clearance, unique in its job.' })
  readonly key!: string;

  @Field(() => ClearanceKind, { description: 'What it is.' })
  readonly kind!: ClearanceKind;

  @Field(() => String, { description: 'Name as shown.' })
  readonly title!: string;

  @Field(() => Int, {
    description: 'Minutes by the clock from the request to the expected answer or delivery.',
  })
  readonly leadMinutes!: number;

  @Field(() => Int, { nullable: true, description: 'Days it lives once given; null when it does not lapse.' })
  readonly lifeDays!: number | null;

  @Field(() => ClearanceState, { description: 'How far it is.' })
  readonly state!: ClearanceState;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was asked for.' })
  readonly requestedAt!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When the answer or delivery is expected.',
  })
  readonly expectedAt!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was given or delivered.' })
  readonly clearedAt!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When it lapses and must be asked for again.',
  })
  readonly lapsesAt!: Date | null;

  @Field(() => String, { nullable: true, description: 'Permit, ticket or order number.' })
  readonly reference!: string | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
