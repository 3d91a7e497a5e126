import { Field, GraphQLISODateTime, ID, ObjectType, registerEnumType } from '@nestjs/graphql';
import { ReminderState } from '../generated/prisma/enums.js';
import { connectionType } from '../platform/graphql/page.js';

registerEnumType(ReminderState, {
  name: 'ReminderState',
  description: 'What has become of a reminder.',
  valuesMap: {
    pending: { description: 'Not due yet, or about to fire.' },
    sent: { description: 'It became a notice.' },
    cancelled: { description: 'No longer wanted: done, passed or removed.' },
    tooLate: { description: 'It could not fire while it was of use.' },
  },
});

/** A notice with a due time that follows from the plan and moves with it. */
@ObjectType({ description: 'A notice with a due time that follows from the plan and moves with it.' })
export class Reminder {
  @Field(() => ID, { description: 'Id of the reminder.' })
  readonly id!: string;

  @Field(() => String, { description: 'Kind of reminder: visit-today, reading-due, ...' })
  readonly kind!: string;

  @Field(() => GraphQLISODateTime, { description: 'When it fires.' })
  readonly dueAt!: Date;

  @Field(() => GraphQLISODateTime, { description: 'After this it is marked too late instead of being sent.' })
  readonly usefulUntil!: Date;

  @Field(() => ReminderState, { description: 'What has become of it.' })
  readonly state!: ReminderState;

  @Field(() => String, { description: 'What it is about: inspection, phase, ...' })
  readonly subjectType!: string;

  @Field(() => ID, { description: 'Id of what it is about.' })
  readonly subjectId!: string;
}

/** A page of reminders. */
export const ReminderConnection = connectionType('Reminder', Reminder);
