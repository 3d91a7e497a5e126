import { ObjectType } from '@nestjs/graphql';
import { outcomeUnion } from '../platform/outcomes/outcome-union.js';
import { WrongState } from '../phases/phases.face.js';
import { ClearanceMissing } from './errors/clearance-missing.js';
import { CureNotReached } from './errors/cure-not-reached.js';
import { InspectionOutstanding } from './errors/inspection-outstanding.js';
import { LimitExceeded } from './errors/limit-exceeded.js';
import { NotWaivable } from './errors/not-waivable.js';
import { ReadingMissing } from './errors/reading-missing.js';

/** What deciding a hold point gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The hold point as it now stands.' })
export class HoldPointChanged {
  readonly holdPointId!: string;
}

/** What `releaseHoldPoint` answers. */
export const ReleaseHoldPointOutcome = outcomeUnion('ReleaseHoldPointOutcome', HoldPointChanged, [
  WrongState,
  LimitExceeded,
  InspectionOutstanding,
  ClearanceMissing,
  ReadingMissing,
  CureNotReached,
]);

/** What `refuseHoldPoint` answers. */
export const RefuseHoldPointOutcome = outcomeUnion('RefuseHoldPointOutcome', HoldPointChanged, [WrongState]);

/** What `waiveHoldPoint` answers. */
export const WaiveHoldPointOutcome = outcomeUnion('WaiveHoldPointOutcome', HoldPointChanged, [
  WrongState,
  NotWaivable,
]);
