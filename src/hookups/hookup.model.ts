import { Field, Float, GraphQLISODateTime, ID, Int, ObjectType, registerEnumType } from '@nestjs/graphql';
import { HookupState } from '../generated/prisma/enums.js';
import { connectionType } from '../platform/graphql/page.js';

registerEnumType(HookupState, {
  name: 'HookupState',
  description: 'State of a hookup.',
  valuesMap: {
    waiting: { description: 'A need is not met yet.' },
    ready: { description: 'All needs are met; the electrician was told.' },
    booked: { description: 'The electrician booked a day.' },
    done: { description: 'Connected and recorded.' },
  },
});

/** The electrician's connection of one heating set. */
@ObjectType({ description: "The electrician's connection of one heating set." })
export class Hookup {
  @Field(() => ID, { description: 'Id of the hookup.' })
  readonly id!: string;

  @Field(() => HookupState, { description: 'State of the hookup.' })
  readonly state!: HookupState;

  @Field(() => Boolean, { description: 'Whether the cold lead is through the wall.' })
  readonly coldLeadThrough!: boolean;

  @Field(() => Float, { nullable: true, description: 'Free length of the cold lead inside the wall, in.' })
  readonly coldLeadFreeInches!: number | null;

  @Field(() => Boolean, { description: 'Whether the sensor lead is through the wall.' })
  readonly sensorThrough!: boolean;

  @Field(() => Boolean, { description: 'Whether both leads are labelled.' })
  readonly leadsLabelled!: boolean;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Since when it is ready; null while it is not.',
  })
  readonly readyAt!: Date | null;

  @Field(() => Int, { description: 'How often it became ready; each time is one notice.' })
  readonly readyCount!: number;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'Day the electrician booked.' })
  readonly bookedFor!: Date | null;

  @Field(() => String, { nullable: true, description: 'Name of whoever booked it.' })
  readonly bookedBy!: string | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was connected.' })
  readonly doneAt!: Date | null;

  @Field(() => String, { nullable: true, description: 'Name of whoever recorded it.' })
  readonly doneBy!: string | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'Since when energising is allowed.' })
  readonly energiseAllowedAt!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was energised.' })
  readonly energisedAt!: Date | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}

/** A page of hookups. */
export const HookupConnection = connectionType('Hookup', Hookup);
