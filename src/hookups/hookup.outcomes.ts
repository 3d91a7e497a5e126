import { ObjectType } from '@nestjs/graphql';
import {
  ClearanceMissing,
  HoldPointOpen,
  InspectionOutstanding,
  LimitExceeded,
  ReadingMissing,
} from '../inspections/inspections.face.js';
import { DesignBroken } from '../phases/gates.face.js';
import { BeforePredecessor, PredecessorUnfinished, WrongState } from '../phases/phases.face.js';
import { outcomeUnion } from '../platform/outcomes/outcome-union.js';
import { NeedsMissing } from './errors/needs-missing.js';

/** What a step of a hookup gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The hookup as it now stands.' })
export class HookupChanged {
  readonly hookupId!: string;
}

/** What `recordLeads` answers. */
export const RecordLeadsOutcome = outcomeUnion('RecordLeadsOutcome', HookupChanged, [WrongState]);

/** What `bookHookup` answers. */
export const BookHookupOutcome = outcomeUnion('BookHookupOutcome', HookupChanged, [WrongState, NeedsMissing]);

/** What `recordHookup` answers. */
export const RecordHookupOutcome = outcomeUnion('RecordHookupOutcome', HookupChanged, [
  WrongState,
  NeedsMissing,
  LimitExceeded,
  DesignBroken,
  PredecessorUnfinished,
  BeforePredecessor,
  InspectionOutstanding,
  ClearanceMissing,
  ReadingMissing,
  HoldPointOpen,
]);

/** What `recordEnergised` answers. */
export const RecordEnergisedOutcome = outcomeUnion('RecordEnergisedOutcome', HookupChanged, [
  WrongState,
  NeedsMissing,
]);
