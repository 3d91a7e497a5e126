import { WrongState } from '../../phases/phases.face.js';
import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';
import { PlacementChanged } from '../placement.outcomes.js';
import { ProtectionMustStay } from './protection-must-stay.js';

/** What `changeProtection` answers. */
export const ChangeProtectionOutcome = outcomeUnion('ChangeProtectionOutcome', PlacementChanged, [
  WrongState,
]);

/** What `takeProtectionOff` answers. */
export const TakeProtectionOffOutcome = outcomeUnion('TakeProtectionOffOutcome', PlacementChanged, [
  WrongState,
  ProtectionMustStay,
]);
