import { ObjectType } from '@nestjs/graphql';
import { WrongState } from '../phases/phases.face.js';
import { outcomeUnion } from '../platform/outcomes/outcome-union.js';

/** What receiving or reading a set gives; the rows are loaded when they are asked for. */
@ObjectType({ description: 'The heating set as it now stands, and the reading just recorded.' })
export class HeatingSetChanged {
  readonly heatingSetId!: string;
  readonly readingId!: string | null;
}

/** What `receiveHeatingSet` answers. */
export const ReceiveHeatingSetOutcome = outcomeUnion('ReceiveHeatingSetOutcome', HeatingSetChanged, [
  WrongState,
]);

/** What `recordCableReading` answers. */
export const RecordCableReadingOutcome = outcomeUnion('RecordCableReadingOutcome', HeatingSetChanged, [
  WrongState,
]);
