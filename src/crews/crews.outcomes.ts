import { ObjectType } from '@nestjs/graphql';
import { outcomeUnion } from '../platform/outcomes/outcome-union.js';

/** What a change of a crew gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The crew as it now stands.' })
export class CrewChanged {
  readonly crewId!: string;
}

/** What a change of equipment gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The equipment as it now stands.' })
export class EquipmentChanged {
  readonly poolId!: string;
}

export const CreateCrewOutcome = outcomeUnion('CreateCrewOutcome', CrewChanged);
export const UpdateCrewOutcome = outcomeUnion('UpdateCrewOutcome', CrewChanged);
export const SetCrewExceptionOutcome = outcomeUnion('SetCrewExceptionOutcome', CrewChanged);
export const ClearCrewExceptionOutcome = outcomeUnion('ClearCrewExceptionOutcome', CrewChanged);
export const SetEquipmentOutcome = outcomeUnion('SetEquipmentOutcome', EquipmentChanged);
