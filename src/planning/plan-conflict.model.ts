import { Field, ObjectType } from '@nestjs/graphql';

/** Something that cannot be had as asked. */
@ObjectType({
  description: 'Something the plan cannot give as asked: a pin before its predecessor, a due date missed.',
})
export class PlanConflict {
  @Field(() => String, {
    description:
      'Which conflict: cycle, lagCycle, lagExceeded, inspectionLapsed, pinBeforePredecessor, pinBeforeGate, pinInClosedTime, pinMoved, commitmentBroken, dueMissed, clearanceLapsed, gateUndated, visitBeforeReady, crewMissing, crewDoubled, poolTooSmall, releaseMissing, poolOverdrawn, noStretch or beyondHorizon.',
  })
  readonly kind!: string;

  @Field(() => String, { description: 'What is in conflict and what can be done, as plain sentences.' })
  readonly text!: string;

  readonly phaseId!: string | null;
  readonly jobId!: string | null;
}
