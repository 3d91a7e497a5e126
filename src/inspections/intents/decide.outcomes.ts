import { Field, ObjectType } from '@nestjs/graphql';
import { WrongState } from '../../phases/phases.face.js';
import { FieldConflict } from '../../platform/outcomes/field-conflict.js';
import { IntentAnswer } from '../../platform/outcomes/intent-answer.js';
import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';
import { ClearanceMissing } from '../errors/clearance-missing.js';
import { CureNotReached } from '../errors/cure-not-reached.js';
import { InspectionOutstanding } from '../errors/inspection-outstanding.js';
import { LimitExceeded } from '../errors/limit-exceeded.js';
import { ReadingMissing } from '../errors/reading-missing.js';

/** What an intent about a hold point gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The hold point as it now stands, and whether this intent made it so.' })
export class HoldPointSettled {
  readonly holdPointId!: string;

  @Field(() => IntentAnswer, { description: 'Whether this intent made it so, or it was so already.' })
  readonly answer!: IntentAnswer;
}

/** What `decideHoldPoint` answers. */
export const DecideHoldPointOutcome = outcomeUnion('DecideHoldPointOutcome', HoldPointSettled, [
  FieldConflict,
  WrongState,
  LimitExceeded,
  InspectionOutstanding,
  ClearanceMissing,
  ReadingMissing,
  CureNotReached,
]);
