import { ObjectType } from '@nestjs/graphql';
import { WrongState } from '../../phases/phases.face.js';
import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';

/** What choosing gives; the rows are loaded when they are asked for. */
@ObjectType({ description: 'The phase with what was chosen for it.' })
export class ProtectionChosen {
  readonly phaseId!: string;
}

/** What `chooseProtection` answers. */
export const ChooseProtectionOutcome = outcomeUnion('ChooseProtectionOutcome', ProtectionChosen, [
  WrongState,
]);
