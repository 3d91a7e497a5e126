import { ObjectType } from '@nestjs/graphql';
import { WrongState } from '../phases/phases.face.js';
import { outcomeUnion } from '../platform/outcomes/outcome-union.js';

/** What recording at a placement gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The placement as it now stands.' })
export class PlacementChanged {
  readonly placementId!: string;
}

/** What `recordPlacement` answers. */
export const RecordPlacementOutcome = outcomeUnion('RecordPlacementOutcome', PlacementChanged, [WrongState]);

/** What `recordTemperature` answers. */
export const RecordTemperatureOutcome = outcomeUnion('RecordTemperatureOutcome', PlacementChanged, [
  WrongState,
]);
