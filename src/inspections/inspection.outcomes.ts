import { ObjectType } from '@nestjs/graphql';
import { WrongState } from '../phases/phases.face.js';
import { outcomeUnion } from '../platform/outcomes/outcome-union.js';
import { NoticeTooShort } from './errors/notice-too-short.js';
import { OutsideVisitingHours } from './errors/outside-visiting-hours.js';

/** What a step of an inspection gives; the rows are loaded when they are asked for. */
@ObjectType({ description: 'The inspection as it now stands, and the re-inspection after a failed one.' })
export class InspectionChanged {
  readonly inspectionId!: string;
  readonly nextId!: string | null;
}

/** What `requestInspection` answers. */
export const RequestInspectionOutcome = outcomeUnion('RequestInspectionOutcome', InspectionChanged, [
  WrongState,
]);

/** What `bookInspection` answers. */
export const BookInspectionOutcome = outcomeUnion('BookInspectionOutcome', InspectionChanged, [
  WrongState,
  NoticeTooShort,
  OutsideVisitingHours,
]);

/** What `passInspection` answers. */
export const PassInspectionOutcome = outcomeUnion('PassInspectionOutcome', InspectionChanged, [WrongState]);

/** What `failInspection` answers. */
export const FailInspectionOutcome = outcomeUnion('FailInspectionOutcome', InspectionChanged, [WrongState]);
