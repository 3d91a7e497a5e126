import { Field, ID, Int, ObjectType, registerEnumType } from '@nestjs/graphql';
import { LagIn, LinkKind, Origin } from '../generated/prisma/enums.js';
import './phase-enums.js';

registerEnumType(LinkKind, {
  name: 'LinkKind',
  description: 'Which end of one phase waits for which end of another.',
  valuesMap: {
    finishStart: { description: 'The later one starts after the earlier one has finished.' },
    startStart: { description: 'The later one starts after the earlier one has started.' },
    finishFinish: { description: 'The later one finishes after the earlier one has finished.' },
    startFinish: { description: 'The later one finishes after the earlier one has started.' },
  },
});

registerEnumType(LagIn, {
  name: 'LagIn',
  description: 'How a lag is counted.',
  valuesMap: {
    working: { description: 'In the open hours of the phase that waits.' },
    elapsed: { description: 'By the clock.' },
  },
});

/** A dependency between two phases of a job. */
@ObjectType({ description: 'A dependency between two phases of a job.' })
export class Link {
  @Field(() => ID, { description: 'Id of the link.' })
  readonly id!: string;

  @Field(() => LinkKind, { description: 'Which ends it ties.' })
  readonly kind!: LinkKind;

  @Field(() => Int, { description: 'Minutes between the two ends; negative for a lead.' })
  readonly lagMinutes!: number;

  @Field(() => LagIn, { description: 'How the lag is counted.' })
  readonly lagIn!: LagIn;

  @Field(() => Origin, { description: 'Whether the template or the office made it.' })
  readonly origin!: Origin;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
