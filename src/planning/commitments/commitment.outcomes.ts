import { BeforePredecessor, CrewBusy, PhaseChanged, WrongState } from '../../phases/phases.face.js';
import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';
import { CommitmentChanged } from './commitment.model.js';

const REFUSALS = [CrewBusy, BeforePredecessor, WrongState];

/** What `commitPhase` answers. */
export const CommitPhaseOutcome = outcomeUnion('CommitPhaseOutcome', CommitmentChanged, REFUSALS);

/** What `commitJob` answers. */
export const CommitJobOutcome = outcomeUnion('CommitJobOutcome', CommitmentChanged, REFUSALS);

/** What `releaseCommitment` answers. */
export const ReleaseCommitmentOutcome = outcomeUnion('ReleaseCommitmentOutcome', CommitmentChanged, [
  WrongState,
]);

/** What `pinPhase` answers. */
export const PinPhaseOutcome = outcomeUnion('PinPhaseOutcome', PhaseChanged, [WrongState]);

/** What `assignCrew` answers. */
export const AssignCrewOutcome = outcomeUnion('AssignCrewOutcome', PhaseChanged, [WrongState]);
