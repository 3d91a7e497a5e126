import { Field, GraphQLISODateTime, ID, Int, ObjectType, registerEnumType } from '@nestjs/graphql';
import { InspectionState } from '../generated/prisma/enums.js';
import { connectionType } from '../platform/graphql/page.js';

registerEnumType(InspectionState, {
  name: 'InspectionState',
  description: 'State of one visit by the authority having jurisdiction.',
  valuesMap: {
    needed: { description: 'Not asked for yet.' },
    requested: { description: 'Asked for; no window booked yet.' },
    booked: { description: 'A window is booked.' },
    passed: { description: 'Passed.' },
    failed: { description: 'Failed; the next attempt is a row of its own.' },
  },
});

/** When the plan expects the visit. */
@ObjectType({ description: 'When the plan expects the visit.' })
export class PlannedVisit {
  @Field(() => GraphQLISODateTime, { description: 'Begin of the visit.' })
  readonly startAt!: Date;

  @Field(() => GraphQLISODateTime, { description: 'End of the visit.' })
  readonly finishAt!: Date;

  @Field(() => GraphQLISODateTime, { description: 'Latest request that still gives this visit.' })
  readonly requestBy!: Date;
}

/** One visit by the authority having jurisdiction. */
@ObjectType({ description: 'One visit by the authority having jurisdiction.' })
export class Inspection {
  @Field(() => ID, { description: 'Id of the inspection.' })
  readonly id!: string;

  @Field(() => String, { description: 'Key within its job; a re-inspection keeps it.' })
  readonly key!: string;

  @Field(() => String, { description: 'What is inspected.' })
  readonly title!: string;

  @Field(() => InspectionState, { description: 'State of the visit.' })
  readonly state!: InspectionState;

  @Field(() => Int, { description: '1 for the first visit, 2 for the first re-inspection, and so on.' })
  readonly attempt!: number;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was asked for.' })
  readonly requestedAt!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'Begin of the booked window.' })
  readonly visitFrom!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'End of the booked window.' })
  readonly visitTo!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When the result was given.' })
  readonly resultAt!: Date | null;

  @Field(() => String, { nullable: true, description: 'Who inspected, as written down on site.' })
  readonly inspector!: string | null;

  @Field(() => String, { nullable: true, description: 'What the inspector said.' })
  readonly note!: string | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}

/** A page of inspections. */
export const InspectionConnection = connectionType('Inspection', Inspection);
