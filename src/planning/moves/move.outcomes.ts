import { WrongState } from '../../phases/phases.face.js';
import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';
import { MoveProposed } from './move.model.js';

/** What `proposeMove` answers. */
export const ProposeMoveOutcome = outcomeUnion('ProposeMoveOutcome', MoveProposed, [WrongState]);
