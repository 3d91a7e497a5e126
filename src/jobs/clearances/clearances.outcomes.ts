import { ObjectType } from '@nestjs/graphql';
import { WrongState } from '../../phases/phases.face.js';
import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';

/** What a change of a clearance gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The clearance as it now stands.' })
export class ClearanceChanged {
  readonly clearanceId!: string;
}

export const RequestClearanceOutcome = outcomeUnion('RequestClearanceOutcome', ClearanceChanged, [
  WrongState,
]);
export const RecordClearanceOutcome = outcomeUnion('RecordClearanceOutcome', ClearanceChanged, [WrongState]);
