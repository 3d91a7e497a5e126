import { CrewBusy } from '../../phases/phases.face.js';
import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';
import { ProposalDecided } from './proposal.model.js';
import { ProposalOutdated } from './proposal-outdated.js';
import { UndoRefused } from './undo-refused.js';

/** What `acceptProposal` answers. */
export const AcceptProposalOutcome = outcomeUnion('AcceptProposalOutcome', ProposalDecided, [
  ProposalOutdated,
  CrewBusy,
]);

/** What `dropProposal` answers. */
export const DropProposalOutcome = outcomeUnion('DropProposalOutcome', ProposalDecided, [ProposalOutdated]);

/** What `undoProposal` answers. */
export const UndoProposalOutcome = outcomeUnion('UndoProposalOutcome', ProposalDecided, [
  UndoRefused,
  CrewBusy,
]);
